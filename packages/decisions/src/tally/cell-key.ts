import { PLAN_CHOICES } from "@courtloom/match-log";
import { CHANNELS, DEPTHS_STRUCK, LANDING_DEPTHS, type LandingDepth } from "@courtloom/tennis";
import type { Choice, Situation } from "../balls/ball.ts";

/** A situation and choice in four letters, for keeping: depth struck, side, how deep the incoming ball came down, choice. */
export type CellKey = string;

/** What a cell of a tally is about. */
export interface TallyCellOf extends Pick<Situation, "depth" | "side"> {
  /** `undefined` at key balls, or where the incoming ball was not drawn. */
  readonly landing: LandingDepth | undefined;
  readonly choice: Choice;
}

const DEPTH_LETTERS = { behindBaseline: "B", insideBaseline: "I", insideServiceLine: "S" } as const;
const SIDE_LETTERS = { left: "L", middle: "M", right: "R" } as const;
const LANDING_LETTERS = { short: "s", mid: "m", deep: "d", unknown: "-" } as const;
const CHOICE_LETTERS = { kept: "k", line: "l", cross: "c", middle: "m", fromMiddle: "f" } as const;

export const cellKey = ({ depth, side, landing, choice }: TallyCellOf): CellKey =>
  DEPTH_LETTERS[depth] + SIDE_LETTERS[side] + LANDING_LETTERS[landing ?? "unknown"] + CHOICE_LETTERS[choice];

/** What a key is about; `undefined` for a text that is no key. SPEC D36. */
export const parseCellKey = (key: string): TallyCellOf | undefined => {
  const [d, s, l, c] = key;
  const depth = DEPTHS_STRUCK.find((each) => DEPTH_LETTERS[each] === d);
  const side = CHANNELS.find((each) => SIDE_LETTERS[each] === s);
  const landing = LANDING_DEPTHS.find((each) => LANDING_LETTERS[each] === l);
  const choice = PLAN_CHOICES.find((each) => CHOICE_LETTERS[each] === c);
  const isWhole = key.length === 4 && (landing !== undefined || l === LANDING_LETTERS.unknown);
  return depth && side && choice && isWhole ? { depth, side, landing, choice } : undefined;
};
