import type { ByPlayer } from "@courtloom/core";

/** The first word of each name, for buttons; the whole names when those would be the same. */
export const shortNames = (names: ByPlayer<string>): ByPlayer<string> => {
  const first = (name: string) => name.split(" ")[0] || name;
  return first(names.A) === first(names.B) ? names : { A: first(names.A), B: first(names.B) };
};
