import {
  academyLogits,
  type ByChoice,
  DEFAULT_SPREAD,
  type Estimate,
  type FitSpread,
  fitChoices,
  fitSpread,
  pointsLost,
  type WonOf,
  worthBySituation,
} from "@courtloom/stats";
import { pool, type SimulatedPlayer, simulateAcademy } from "@courtloom/stats/testing";
import { drawsOf, drawWhole } from "../draws.ts";

const PLAYERS = 60;
const SITUATIONS = 6;
/** Choices off the plan of a player in one situation over a season, at most. */
const MOST_OFF_PLAN = 12;

/** Ways of saying what a choice is worth: without a fit, and with spreads as set, too small, too large, fitted. */
export const ESTIMATORS = ["raw", "academy", "set", "halved", "doubled", "fitted"] as const;
export type Estimator = (typeof ESTIMATORS)[number];

/** Sums over worths; divided by counts they are means. */
export interface Recovered {
  readonly count: number;
  readonly squares: number;
  /** Error summed over players at least one spread above the academy. */
  readonly strongCount: number;
  readonly strongError: number;
  /** 90 % intervals that hold the truth, and their widths; 0 where there is none. */
  readonly covered: number;
  readonly widths: number;
}

export interface AcademyOutcome {
  readonly worths: Readonly<Record<Estimator, Recovered>>;
  /** Points that go with choices off the plan, of each player, with spreads as set. */
  readonly pointsLost: Pick<Recovered, "count" | "covered">;
}

type Interval = Pick<Estimate, "value" | "low" | "high">;

const NOTHING: ByChoice<WonOf> = [
  { won: 0, n: 0 },
  { won: 0, n: 0 },
];

const scaled = (factor: number): FitSpread => ({
  player: factor * DEFAULT_SPREAD.player,
  situation: factor * DEFAULT_SPREAD.situation,
  choice: factor * DEFAULT_SPREAD.choice,
});

const bare = (value: number): Interval => ({ value, low: Number.NaN, high: Number.NaN });

const holds = ({ low, high }: Interval, truth: number): boolean => low <= truth && truth <= high;

const sumUp = (
  players: readonly SimulatedPlayer[],
  estimates: (player: SimulatedPlayer) => readonly Interval[],
): Recovered => {
  const each = players.flatMap((player) =>
    estimates(player).map((estimate, s) => {
      const truth = player.differences[s] ?? Number.NaN;
      const isStrong = player.level >= DEFAULT_SPREAD.player;
      return { estimate, truth, isStrong, error: estimate.value - truth };
    }),
  );
  const sum = (of: (one: (typeof each)[number]) => number): number =>
    each.reduce((total, one) => total + of(one), 0);
  return {
    count: each.length,
    squares: sum(({ error }) => error ** 2),
    strongCount: sum(({ isStrong }) => (isStrong ? 1 : 0)),
    strongError: sum(({ isStrong, error }) => (isStrong ? error : 0)),
    covered: sum(({ estimate, truth }) => (holds(estimate, truth) ? 1 : 0)),
    widths: sum(({ estimate: { low, high } }) => (Number.isNaN(high) ? 0 : high - low)),
  };
};

const rawDifferences = ({ counts }: SimulatedPlayer): readonly Interval[] =>
  counts.map(([first, second]) => bare(first.won / first.n - second.won / second.n));

/**
 * An academy of 60 players whose worths are known, 20 to 200 points with the first choice and 2 to 60 with the second
 * in each of 6 situations: what the product's fit and simpler ways make of them. SPEC OP7.
 */
export const recoverAcademy = (seed: number, academy: number): AcademyOutcome => {
  const draws = drawsOf(seed, `academy ${academy}`);
  const players = simulateAcademy(draws, PLAYERS, SITUATIONS, DEFAULT_SPREAD);
  const logits = academyLogits(pool(players));
  const fitOf = ({ counts }: Pick<SimulatedPlayer, "counts">, spread: FitSpread) =>
    fitChoices({ academyLogits: logits, counts }, spread);
  const worths = (spread: FitSpread) =>
    sumUp(players, (player) => worthBySituation(fitOf(player, spread)).map(({ difference }) => difference));
  const level = worthBySituation(fitOf({ counts: logits.map(() => NOTHING) }, DEFAULT_SPREAD));
  const fitted = fitSpread(
    logits,
    players.map(({ counts }) => counts),
  );
  const lost = players.map((player) => {
    const counts = player.differences.map(() => drawWhole(draws, 0, MOST_OFF_PLAN));
    const truth = counts.reduce((sum, count, s) => sum + count * (player.differences[s] ?? Number.NaN), 0);
    const offPlan = counts.map((count) => ({ planned: 0, count }) as const);
    return holds(pointsLost(fitOf(player, DEFAULT_SPREAD), offPlan), truth);
  });
  return {
    worths: {
      raw: sumUp(players, rawDifferences),
      academy: sumUp(players, () => level.map(({ difference }) => bare(difference.value))),
      set: worths(DEFAULT_SPREAD),
      halved: worths(scaled(0.5)),
      doubled: worths(scaled(2)),
      fitted: worths(fitted),
    },
    pointsLost: { count: lost.length, covered: lost.filter(Boolean).length },
  };
};
