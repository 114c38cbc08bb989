import { watchCourse } from "@courtloom/decisions";
import type { FrozenWatch, MatchView } from "@courtloom/match-log";
import { alertProbability, betaNodes, DAY_TO_DAY, withOdds } from "@courtloom/stats";
import { type Draws, drawsOf } from "../draws.ts";
import { attemptsFrom } from "./charted-match.ts";
import { type Condition, nameOf } from "./condition.ts";
import { drawDay } from "./draw-day.ts";
import { drawAttempts, type FreezeOnce, type WatchedRate, watchedPlayer } from "./watched-player.ts";

/** How one player's matches went, by the condition's odds ratios. */
export interface PlayerOutcome {
  /** Matches with any alert. */
  readonly raised: readonly number[];
  /** Matches with more than one alert of the same watch. */
  readonly again: readonly number[];
  /**
   * Probability of an alert in such a match by exact recursion, averaged over 41 days; `undefined` where matches have
   * no one length or several watches are on.
   */
  readonly exact: readonly number[] | undefined;
}

/** What every player's matches share. */
export interface Stage {
  readonly view: MatchView;
  readonly freeze: FreezeOnce;
}

const eventsAt = (draws: Draws, n: number, rate: number): boolean[] =>
  Array.from({ length: n }, () => draws() < rate);

/** Alerts of each watch in one match. */
const playMatch = (
  condition: Condition,
  rates: readonly WatchedRate[],
  oddsRatio: number,
  draws: Draws,
  view: MatchView,
): readonly number[] =>
  rates.map(({ trueRate, watch }) => {
    const n = drawAttempts(condition.attempts, draws);
    const today = withOdds(drawDay(draws, trueRate), oddsRatio);
    return watchCourse(view, watch, attemptsFrom(eventsAt(draws, n, today))).episodes.length;
  });

const exactly = (watch: FrozenWatch, days: readonly number[], oddsRatio: number): number => {
  const raised = days.map((day) =>
    alertProbability(watch, watch.red.first, withOdds(day, oddsRatio), watch.horizon),
  );
  return raised.reduce((sum, p) => sum + p, 0) / days.length;
};

const exactOf = ({ attempts, oddsRatios }: Condition, rates: readonly WatchedRate[]) => {
  const [only] = rates;
  if (attempts !== "thirty" || rates.length > 1 || !only) return undefined;
  const days = betaNodes({ a: DAY_TO_DAY * only.trueRate, b: DAY_TO_DAY * (1 - only.trueRate) });
  return oddsRatios.map((oddsRatio) => exactly(only.watch, days, oddsRatio));
};

/** `matches` matches of one player for each odds ratio, every one through the product's own watch. SPEC OP1. */
export const simulatePlayer = (
  condition: Condition,
  { seed, player, matches }: { readonly seed: number; readonly player: number; readonly matches: number },
  { view, freeze }: Stage,
): PlayerOutcome => {
  const draws = drawsOf(seed, `${nameOf(condition)}, player ${player}`);
  const rates = watchedPlayer(condition, draws, freeze);
  const alerts = condition.oddsRatios.map((oddsRatio) =>
    Array.from({ length: matches }, () => playMatch(condition, rates, oddsRatio, draws, view)),
  );
  const matchesWith = (least: number): number[] =>
    alerts.map((series) => series.filter((match) => match.some((count) => count >= least)).length);
  return { raised: matchesWith(1), again: matchesWith(2), exact: exactOf(condition, rates) };
};
