import { err, ok, type Result } from "@courtloom/core";

export const BENCH_NAMES = ["fold", "pad-script", "drag", "offline", "board", "broadcast"] as const;

export type BenchName = (typeof BENCH_NAMES)[number];

const isBenchName = (word: string): word is BenchName => BENCH_NAMES.some((name) => name === word);

/** What the command line names, in the order of `BENCH_NAMES`; everything if it names nothing. The error is for people. */
export const chooseBenches = (words: readonly string[]): Result<readonly BenchName[], string> => {
  const unknown = words.find((word) => !isBenchName(word));
  if (unknown !== undefined)
    return err(
      `There is no bench called "${unknown}". Name any of ${BENCH_NAMES.join(", ")}, or none for all.`,
    );
  return ok(words.length === 0 ? BENCH_NAMES : BENCH_NAMES.filter((name) => words.includes(name)));
};
