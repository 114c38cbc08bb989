import { parseArgs } from "node:util";
import { err, ok, type Result } from "@courtloom/core";

/** What was asked for: what there is, the watches' figures, or the fit's. */
export type Asked =
  | { readonly kind: "help" }
  | { readonly kind: "operating"; readonly seed: number; readonly matches: number }
  | { readonly kind: "recovery"; readonly seed: number; readonly academies: number };

export const USAGE = [
  "npm run figures -- --operating [--matches 20000] [--seed 1]   false alarms and what is found, by simulated matches through the watches",
  "npm run figures -- --recovery [--academies 40] [--seed 1]     how near the fit of what choices are worth comes to known worths",
] as const;

const HOW = "Use --operating [--matches 20000] [--seed 1], or --recovery [--academies 40] [--seed 1].";

const OPTIONS = {
  operating: { type: "boolean" },
  recovery: { type: "boolean" },
  matches: { type: "string" },
  academies: { type: "string" },
  seed: { type: "string" },
} as const;

const LARGEST = 2_000_000_000;

/** A whole number from `least`; the default where nothing was said. */
const wholeOf = (text: string | undefined, otherwise: number, least: number): number => {
  const whole = text === undefined ? otherwise : Number(text);
  return Number.isInteger(whole) && whole >= least && whole <= LARGEST ? whole : Number.NaN;
};

type Values = {
  operating?: boolean;
  recovery?: boolean;
  matches?: string;
  academies?: string;
  seed?: string;
};

const refusalOf = ({ operating, recovery, matches, academies }: Values): string | undefined => {
  if (operating && recovery) return "One at a time";
  if (matches !== undefined && !operating) return "--matches goes with --operating";
  if (academies !== undefined && !recovery) return "--academies goes with --recovery";
  return undefined;
};

/** Reads the command line; a refusal is a sentence that says what to write. SPEC OP9. */
export const parseArguments = (args: readonly string[]): Result<Asked, string> => {
  let values: Values;
  try {
    values = parseArgs({ args: [...args], options: OPTIONS, strict: true }).values;
  } catch (error) {
    return err(`${error instanceof Error ? error.message : error}. ${HOW}`);
  }
  const refusal = refusalOf(values);
  if (refusal) return err(`${refusal}. ${HOW}`);
  const seed = wholeOf(values.seed, 1, 0);
  const matches = wholeOf(values.matches, 20_000, 100);
  const academies = wholeOf(values.academies, 40, 1);
  if (Number.isNaN(seed)) return err(`A seed is a whole number. ${HOW}`);
  if (Number.isNaN(matches)) return err(`At least 100 matches are needed, as a whole number. ${HOW}`);
  if (Number.isNaN(academies)) return err(`At least one academy is needed, as a whole number. ${HOW}`);
  if (values.operating) return ok({ kind: "operating", seed, matches });
  return values.recovery ? ok({ kind: "recovery", seed, academies }) : ok({ kind: "help" });
};
