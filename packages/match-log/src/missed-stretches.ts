import type { ScoreState } from "@courtloom/tennis";
import type { MatchView } from "./view.ts";

/** Points that were played and that nobody charted, as a person stated. */
export interface MissedStretch {
  /** Index in the view's points of the first one after it; their number when none came yet. */
  readonly beforePoint: number;
  /** How many there were at least, as the score before and after tells. */
  readonly atLeast: number;
}

/** Points that win a game at love, the fewest that it can have. */
const SHORTEST_GAME = 4;

const gamesOf = ({ sets, games }: ScoreState): number =>
  [...sets, games].reduce((sum, [a, b]) => sum + a + b, 0);

const pointsOf = ({ points }: ScoreState): number => points[0] + points[1];

/** The fewest points that lead from one score to another; 0 for a score that is not later. */
const fewestBetween = (from: ScoreState, to: ScoreState): number => {
  const games = gamesOf(to) - gamesOf(from);
  if (games < 0) return 0;
  if (games === 0) return Math.max(0, pointsOf(to) - pointsOf(from));
  const toFinish = Math.max(1, SHORTEST_GAME - Math.max(...from.points));
  return toFinish + SHORTEST_GAME * (games - 1) + pointsOf(to);
};

/**
 * The stretches that were stated as missed, in order. Their length is a lower bound: a score does not tell how
 * often it was level. None: empty. SPEC L30.
 */
export const missedStretches = (view: MatchView): readonly MissedStretch[] => {
  const stretches: MissedStretch[] = [];
  const refused = new Set(view.setAside.map(({ id }) => id));
  let next = 0;
  for (const { id, fact, voided } of view.trail.facts) {
    if (view.points[next]?.id === id) next += 1;
    if (fact.kind !== "ScoreStated" || !fact.missed || voided || refused.has(id)) continue;
    const from = view.points[next - 1]?.after;
    const to = view.points[next]?.before ?? view.score;
    const fresh = to.points.map(() => 0) as [number, number];
    const start = from ?? { ...to, sets: [], games: fresh, points: fresh };
    stretches.push({ beforePoint: next, atLeast: fewestBetween(start, to) });
  }
  return stretches;
};
