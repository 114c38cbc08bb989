import { chmodSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { formatPair, type KeyPair } from "./key-pair.ts";

const OWNER_ONLY = 0o600;

/** The text of a file that only its owner may read; `undefined` if there is none. */
export const readPrivate = (file: string): string | undefined => {
  try {
    chmodSync(file, OWNER_ONLY);
    return readFileSync(file, "utf8");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw error;
  }
};

/** On disk, readable by its owner alone, before it gets its name: a crash leaves the old pair or the new one. */
export const writePair = (file: string, pair: KeyPair): void => {
  const draft = `${file}.new`;
  writeFileSync(draft, formatPair(pair), { mode: OWNER_ONLY, flush: true });
  chmodSync(draft, OWNER_ONLY);
  renameSync(draft, file);
};
