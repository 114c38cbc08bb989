import { watchCourse } from "@courtloom/decisions";
import type { FrozenWatch, MatchView } from "@courtloom/match-log";
import { cusumScores, DESIGN_ODDS_RATIO, smallestThreshold, withOdds } from "@courtloom/stats";
import { type Draws, drawsOf } from "../draws.ts";
import { attemptsFrom, ROOM } from "./charted-match.ts";

const AFTER = 15;
const DESIGNED_FOR = 30;
const ALPHA = 0.05;

/** Shares of matches within fifteen attempts after a raise. */
export interface ClearingOutcome {
  readonly rate: number;
  readonly matches: number;
  /** Eased, when the rate is the usual one again. */
  readonly cleared: number;
  /** Eased, though the odds are still 2.5 times as high. */
  readonly wrongly: number;
  /** Raised again, when the rate is the usual one again. */
  readonly again: number;
}

/** A watch that knows the usual rate for certain, with one threshold for the whole match. */
const knowingWatch = (rate: number): FrozenWatch => {
  const scores = cusumScores(rate);
  const { threshold } = smallestThreshold(scores, [rate], DESIGNED_FOR, ALPHA);
  const both = { first: threshold, late: threshold };
  return {
    side: "A",
    rate: "lineMissed",
    version: 1,
    usual: rate,
    source: "own",
    ...scores,
    horizon: ROOM,
    red: both,
    amber: both,
    alpha: ALPHA,
  };
};

/** Raised as fast as can be, which leaves the evidence where every raise leaves it, and then fifteen attempts. */
const playOn = (watch: FrozenWatch, today: number, draws: Draws, view: MatchView) => {
  const raise = Array.from({ length: Math.ceil(watch.red.first / watch.up) }, () => true);
  const all = [...raise, ...Array.from({ length: AFTER }, () => draws() < today)];
  const whole = watchCourse(view, watch, attemptsFrom(all));
  if (whole.episodes[0]?.easedBy === undefined) return { eased: false, again: false };
  const states = all.map((_, i) => watchCourse(view, watch, attemptsFrom(all.slice(0, i + 1))).state);
  return { eased: true, again: states.lastIndexOf("standing") > states.indexOf("easing") };
};

/** How soon alerts ease and come back, for one usual rate in (0, 1). SPEC OP6. */
export const simulateClearing = (
  rate: number,
  { seed, matches }: { readonly seed: number; readonly matches: number },
  view: MatchView,
): ClearingOutcome => {
  const draws = drawsOf(seed, `clearing ${rate}`);
  const watch = knowingWatch(rate);
  const series = (today: number) => Array.from({ length: matches }, () => playOn(watch, today, draws, view));
  const [well, unwell] = [series(rate), series(withOdds(rate, DESIGN_ODDS_RATIO))];
  const share = (played: readonly boolean[]): number => played.filter(Boolean).length / matches;
  return {
    rate,
    matches,
    cleared: share(well.map(({ eased }) => eased)),
    wrongly: share(unwell.map(({ eased }) => eased)),
    again: share(well.map(({ again }) => again)),
  };
};
