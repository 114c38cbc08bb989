import { type Condition, PASTS } from "./condition.ts";

/** A condition with how many players are simulated, and how many matches of each for each odds ratio. */
export interface PlannedCondition {
  readonly condition: Condition;
  readonly players: number;
  readonly matchesEach: number;
}

/** Three players for every forty matches: 1,500 for 20,000. */
const MATCHES_PER_PLAYER = 40 / 3;
/** Freezing takes nearly all of the time, so series beside the table have fewer players, with more matches each. */
const USED_FEWER = 4;
const SPLIT_FEWER = 8;

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
  const fewerOf = ({ past, watches }: Condition): number =>
    // Without a past all players have one watch in common, and differ the most.
    past === 0 ? 1 : watches === 1 ? USED_FEWER : SPLIT_FEWER;
  return [
    ...table.map((condition) => spread(condition, matches, 1)),
    ...[...used, ...split].map((condition) => spread(condition, matches, fewerOf(condition))),
  ];
};
