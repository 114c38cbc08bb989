import { byPlayer, type Side } from "@courtloom/core";
import type { TileScore } from "@courtloom/protocol";
import type { ScoreState } from "@courtloom/tennis";

const CALLED = ["0", "15", "30", "40"] as const;
const at = (pair: readonly [number, number], side: Side): number => (side === "A" ? pair[0] : pair[1]);

/** A game's points as they are called: 0, 15, 30, 40, Ad; in a tie-break the number. */
const called = ({ points, tieBreak }: ScoreState, side: Side): string => {
  const own = at(points, side);
  const other = at(points, side === "A" ? "B" : "A");
  if (tieBreak) return String(own);
  if (own > 3 && own > other) return "Ad";
  return CALLED[Math.min(own, 3)] ?? "40";
};

/** The score as a tile shows it. SPEC LV9. */
export const tileScoreOf = (score: ScoreState): TileScore => ({
  sets: score.sets,
  games: score.games,
  points: byPlayer((side) => called(score, side)),
  server: score.server,
  tieBreak: score.tieBreak,
  matchTieBreak: score.matchTieBreak,
  endsDue: score.endsDue,
  winner: score.winner,
  status: score.status,
});
