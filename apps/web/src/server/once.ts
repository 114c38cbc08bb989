import "server-only";

type Kept = Map<string, unknown>;
const KEY = Symbol.for("courtloom.web");

/** Made when first asked for and kept for the life of the process, also when the development server reloads modules. */
export const once = <T>(name: string, make: () => T): T => {
  const holder = globalThis as { [KEY]?: Kept };
  holder[KEY] ??= new Map();
  const kept = holder[KEY];
  if (!kept.has(name)) kept.set(name, make());
  return kept.get(name) as T;
};
