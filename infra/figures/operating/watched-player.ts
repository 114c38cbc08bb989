import {
  DEFAULT_WATCH_SETTINGS,
  freezeOpening,
  freezeWatch,
  type Tally,
  type WatchDesign,
  watchDesigns,
} from "@courtloom/decisions";
import { type FrozenWatch, RATES, type Rate } from "@courtloom/match-log";
import { THREE_SETS } from "@courtloom/match-log/testing";
import { designAttempts } from "@courtloom/stats";
import { drawBeta, drawCount } from "@courtloom/stats/testing";
import { type Draws, drawWhole } from "../draws.ts";
import type { Condition } from "./condition.ts";
import { drawDay } from "./draw-day.ts";

/** Beta(5, 15): what players' true rates are drawn from. An academy that knows as much has this prior. */
const TRUE_RATES = { a: 5, b: 15 };
/** (1,000 + ½) / (4,001 + 1) is exactly one in four. */
const ACADEMY = { x: 1000, n: 4001 };
const SHORTEST = 8;
const LONGEST = 40;
const THIRTY = 30;

/** One rate of a simulated player: what it truly is, and the watch that the product froze on its past. */
export interface WatchedRate {
  readonly trueRate: number;
  readonly watch: FrozenWatch;
}

type Counts = Readonly<Partial<Record<Rate, readonly [x: number, n: number]>>>;

const tallyOf = (counts: Counts): Tally => ({ version: 2, levels: { every: { counts, cells: {} } } });

const eachRate = (rates: readonly Rate[], count: (rate: Rate) => readonly [number, number]): Counts =>
  Object.fromEntries(rates.map((rate) => [rate, count(rate)]));

/** How many attempts a match of the player has. */
export const drawAttempts = (attempts: Condition["attempts"], draws: Draws): number =>
  attempts === "thirty" ? THIRTY : drawWhole(draws, SHORTEST, LONGEST);

/** Freezes each distinct design once: without a past all players have the same. */
export type FreezeOnce = (design: WatchDesign) => FrozenWatch;

export const createFreezeOnce = (): FreezeOnce => {
  const frozen = new Map<string, FrozenWatch>();
  return (design) => {
    const { usual, alpha, rate, pastAttempts, quiet } = design;
    const key = JSON.stringify([usual.a, usual.b, alpha, rate, designAttempts(pastAttempts), quiet]);
    const known = frozen.get(key) ?? freezeWatch(design);
    frozen.set(key, known);
    return known;
  };
};

const openingWith = (own: readonly Tally[], rates: readonly Rate[]) =>
  freezeOpening({
    matchId: "simulated",
    format: THREE_SETS,
    firstServer: "A",
    players: {
      A: { playerId: "simulated", hand: "right", own: true },
      B: { playerId: "visitor", hand: "unknown", own: false },
    },
    doubles: false,
    coachingMode: "notKnown",
    past: { own: { A: own, B: [] }, academy: [tallyOf(eachRate(rates, () => [ACADEMY.x, ACADEMY.n]))] },
  });

/**
 * A player with a past: each watched rate has a true value of its own, each past match 8 to 40 attempts at that day's
 * rate. The usual rate, the split of the error rate and the thresholds are the product's own. SPEC OP1.
 */
export const watchedPlayer = (
  { past, watches, attempts }: Condition,
  draws: Draws,
  freeze: FreezeOnce,
): readonly WatchedRate[] => {
  const rates = RATES.slice(0, watches);
  const truth = new Map(rates.map((rate) => [rate, drawBeta(draws, TRUE_RATES.a, TRUE_RATES.b)]));
  const trueRate = (rate: Rate): number => truth.get(rate) ?? Number.NaN;
  const own = Array.from({ length: past }, () =>
    tallyOf(
      eachRate(rates, (rate) => {
        const n = drawAttempts("own", draws);
        return [drawCount(draws, n, drawDay(draws, trueRate(rate))), n];
      }),
    ),
  );
  const thirty = tallyOf(eachRate(rates, () => [0, THIRTY]));
  const lengths = attempts === "own" ? own : Array.from({ length: 5 }, () => thirty);
  const settings = { A: { ...DEFAULT_WATCH_SETTINGS, rates }, B: null };
  const designs = watchDesigns(openingWith(own, rates), settings, { A: lengths, B: [] });
  return designs.map((design) => ({ trueRate: trueRate(design.rate), watch: freeze(design) }));
};
