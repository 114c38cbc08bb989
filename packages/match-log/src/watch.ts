import type { Side } from "@courtloom/core";
import type { Rate } from "./opened.ts";

/**
 * A watch on one rate of one player, frozen when the match opens, so that what it says is a pure function of the
 * log. Scores and thresholds are whole numbers, 100 per nat.
 */
export interface FrozenWatch {
  readonly side: Side;
  readonly rate: Rate;
  /** Of the rule of watching itself; another one after any change of what a watch means. */
  readonly version: number;
  /** The usual rate it compares with, in (0, 1), and whose past that is. */
  readonly usual: number;
  readonly source: "own" | "academy";
  /** Added for an attempt that counts in the rate, and taken for one that does not. */
  readonly up: number;
  readonly down: number;
  /** Attempts that the thresholds are made for; beyond it those for twice as many hold. */
  readonly horizon: number;
  readonly red: { readonly first: number; readonly late: number };
  readonly amber: { readonly first: number; readonly late: number };
  /** The false-alarm probability per match that `red` was made for, of this watch alone. */
  readonly alpha: number;
}
