import { createHash } from "node:crypto";

/** What happened in a schedule, line by line; its hash tells whether two runs were the same. */
export interface Trace {
  readonly say: (who: string, what: string) => void;
  /** Hex; of every line so far. */
  readonly hash: () => string;
  readonly lines: () => readonly string[];
}

/** `keep` false: only the hash is kept. */
export const createTrace = (nowMs: () => number, keep: boolean): Trace => {
  const hash = createHash("sha256");
  const lines: string[] = [];
  return {
    say: (who, what) => {
      const line = `${String(nowMs()).padStart(6)} ${who}: ${what}`;
      hash.update(line).update("\n");
      if (keep) lines.push(line);
    },
    hash: () => hash.copy().digest("hex"),
    lines: () => lines,
  };
};
