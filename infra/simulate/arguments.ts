import { parseArgs } from "node:util";
import { err, ok, type Result } from "@courtloom/core";

/** What was asked for: a run of seeds, one seed with its trace, or the hunt for the built-in defects. */
export type Asked =
  | { readonly kind: "seeds"; readonly from: number; readonly count: number }
  | { readonly kind: "seed"; readonly seed: number }
  | { readonly kind: "defects"; readonly from: number; readonly count: number };

const USAGE =
  "Use --seeds 1000 [--from 1], --seed 42 for one seed's trace, or --defects [--from 1] [--seeds 200].";

const OPTIONS = {
  seeds: { type: "string" },
  from: { type: "string" },
  seed: { type: "string" },
  defects: { type: "boolean" },
} as const;

/** A whole number from 0 to 2,000,000,000; the default where nothing was said. */
const wholeOf = (text: string | undefined, otherwise: number): number => {
  const whole = text === undefined ? otherwise : Number(text);
  return Number.isInteger(whole) && whole >= 0 && whole <= 2_000_000_000 ? whole : Number.NaN;
};

/** Reads the command line; a refusal is a sentence that says what to write. */
export const parseArguments = (args: readonly string[]): Result<Asked, string> => {
  let values: { seeds?: string; from?: string; seed?: string; defects?: boolean };
  try {
    values = parseArgs({ args: [...args], options: OPTIONS, strict: true }).values;
  } catch (error) {
    return err(`${error instanceof Error ? error.message : error}. ${USAGE}`);
  }
  const seed = wholeOf(values.seed, 0);
  const from = wholeOf(values.from, 1);
  const count = wholeOf(values.seeds, values.defects ? 200 : 1_000);
  if ([seed, from, count].some(Number.isNaN)) return err(`Seeds are whole numbers. ${USAGE}`);
  if (count === 0) return err(`At least one seed is needed. ${USAGE}`);
  if (values.defects) return ok({ kind: "defects", from, count });
  return values.seed === undefined ? ok({ kind: "seeds", from, count }) : ok({ kind: "seed", seed });
};
