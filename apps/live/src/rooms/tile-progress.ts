import { byPlayer, type Side } from "@courtloom/core";
import type { MatchView, ViewedPoint } from "@courtloom/match-log";
import type { TileProgress } from "@courtloom/protocol";
import type { ScoreState } from "@courtloom/tennis";

const at = (pair: readonly [number, number], side: Side): number => (side === "A" ? pair[0] : pair[1]);

const wonGame = (before: ScoreState, after: ScoreState, side: Side): boolean => {
  if (after.sets.length === before.sets.length) return at(after.games, side) > at(before.games, side);
  const [a = 0, b = 0] = after.sets.at(-1) ?? [];
  return at([a, b], side) > at(before.games, side);
};

/** A game that was won with this point by the side that did not serve; a tie-break has none. */
const isBreakBy = ({ before, after, server }: ViewedPoint, side: Side): boolean =>
  server !== side && !before.tieBreak && wonGame(before, after, side);

/** How much of a match was played, as counts. SPEC LV52. */
export const tileProgressOf = (view: MatchView): TileProgress => ({
  points: view.points.length,
  breaks: byPlayer((side) => view.points.filter((point) => isBreakBy(point, side)).length),
  suspensions: view.trail.facts.filter(({ fact, voided }) => fact.kind === "PlaySuspended" && !voided).length,
});
