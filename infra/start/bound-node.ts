import { DIE_WITH_PARENT_MARK } from "./die-with-parent-mark.ts";

const PRELOAD = new URL("./die-with-parent.ts", import.meta.url).href;

/** Arguments for a Node that ends when this process does; it needs `boundEnv` and a channel ("ipc"). */
export const boundArgs = (args: readonly string[]): string[] => ["--import", PRELOAD, ...args];

export const boundEnv = (env: Readonly<Record<string, string>>): Record<string, string> => ({
  ...env,
  [DIE_WITH_PARENT_MARK]: "1",
});
