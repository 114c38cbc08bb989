import { type Condition, PASTS } from "./condition.ts";

/** A condition with how many players are simulated, and how many matches of each for each odds ratio. */
export interface PlannedCondition {
  readonly condition: Condition;
  readonly players: number;
  readonly matchesEach: number;
}

/** Three players for every forty matches: 1,500 for 20,000. */
const MATCHES_PER_PLAYER = 40 / 3;
/** Freezing takes most of the time; several watches of a player need as many. */
const SPLIT_PLAYERS = 4;

const spread = (condition: Condition, matches: number, fewer: number): PlannedCondition => {
  const players = Math.max(2, Math.ceil(matches / MATCHES_PER_PLAYER / fewer));
  return { condition, players, matchesEach: Math.ceil(matches / players) };
};

/** All that is simulated for at least `matches` matches of each series: the table, the split, and as it is used. */
export const planRun = (matches: number): readonly PlannedCondition[] => {
  const table = PASTS.map(
    (past): Condition => ({ past, watches: 1, attempts: "thirty", oddsRatios: [1, 2, 3] }),
  );
  const split = PASTS.flatMap((past) =>
    ([2, 4] as const).map((watches): Condition => ({ past, watches, attempts: "thirty", oddsRatios: [1] })),
  );
  const used = PASTS.map((past): Condition => ({ past, watches: 1, attempts: "own", oddsRatios: [1] }));
  return [
    ...[...table, ...used].map((condition) => spread(condition, matches, 1)),
    ...split.map((condition) => spread(condition, matches, condition.past === 0 ? 1 : SPLIT_PLAYERS)),
  ];
};
