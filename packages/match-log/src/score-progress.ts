import type { ScoreState } from "@courtloom/tennis";

/** Sets, games of the set, points of the game: how far a match is. */
const progressOf = ({ sets, games, points }: ScoreState): readonly [number, number, number] => [
  sets.length,
  games[0] + games[1],
  points[0] + points[1],
];

/** Whether a match is further at `state` than at `than`, whoever won what; false at the same place. */
export const isBeyond = (state: ScoreState, than: ScoreState): boolean => {
  const [a, b] = [progressOf(state), progressOf(than)];
  const at = a.findIndex((count, i) => count !== b[i]);
  return at >= 0 && (a[at] ?? 0) > (b[at] ?? 0);
};
