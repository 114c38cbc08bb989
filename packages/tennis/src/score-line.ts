import { otherSide, type Side } from "@courtloom/core";
import { indexOf } from "./pair.ts";
import type { FinishedSet, ScoreState } from "./score-state.ts";

const CALLS = ["0", "15", "30", "40"] as const;

/** One finished set from the view of `side`: "6-4", "6-7(5)" with the loser's points, "[10-8]" for a match tie-break. */
export function describeSet(set: FinishedSet, side: Side): string {
  const own = set[indexOf(side)];
  const other = set[indexOf(otherSide(side))];
  if (set[2] === "MTB") return `[${own}-${other}]`;
  return set[2] === undefined ? `${own}-${other}` : `${own}-${other}(${set[2]})`;
}

/**
 * The finished sets and the unfinished one, from the view of `side`: "6-4 3-2". Empty before the first game.
 * SPEC SC39.
 */
export function describeSets(state: ScoreState, side: Side): string {
  const sets = state.sets.map((set) => describeSet(set, side));
  const [own, other] = fromView(state.games, side);
  const isShown = own + other > 0 || (!state.over && !state.matchTieBreak);
  return [...sets, ...(isShown ? [`${own}-${other}`] : [])].join(" ");
}

/** The whole score from the view of `side`: "6-4 3-2 30-15"; without points once the match is over. */
export function scoreLine(state: ScoreState, side: Side): string {
  const points = state.over ? "" : describePoints(state, side);
  return [describeSets(state, side), points].filter((part) => part !== "").join(" ");
}

/** The points of the game in play from the view of `side`: "30-15", "40-40", "40-ad", and plain numbers in a tie-break. */
export function describePoints(state: ScoreState, side: Side): string {
  const [own, other] = fromView(state.points, side);
  if (state.tieBreak) return `${own}-${other}`;
  if (own >= 3 && other >= 3) return own === other ? "40-40" : own > other ? "ad-40" : "40-ad";
  return `${CALLS[own]}-${CALLS[other]}`;
}

const fromView = (pair: readonly [number, number], side: Side): readonly [number, number] =>
  side === "A" ? pair : [pair[1], pair[0]];
