import type { UsualNow, WatchChoice } from "@courtloom/api";
import type { Rate } from "@courtloom/match-log";
import { inTen } from "../loom/rate-words.ts";

interface WatchedWords {
  readonly label: string;
  /** What one attempt is, many of them. */
  readonly counted: string;
  /** What more of it than usual is. */
  readonly tells: string;
}

/** Words of every rate that may be watched. SPEC WA23. */
export const WATCHED_WORDS: Readonly<Record<Rate, WatchedWords>> = {
  lineMissed: {
    label: "Line balls missed",
    counted: "line balls",
    tells: "More line balls than usual end net, wide or long.",
  },
  lineShare: {
    label: "Groundstrokes down the line",
    counted: "groundstrokes",
    tells: "More groundstrokes than usual go down the line.",
  },
  keptMissed: {
    label: "Kept balls missed",
    counted: "kept balls",
    tells: "More balls kept cross-court or middle than usual are missed.",
  },
  lineOffPlan: {
    label: "Line balls off plan",
    counted: "line balls judged",
    tells: "More line balls than usual are hit when the plan has the line not on.",
  },
  passedUp: {
    label: "Agreed moments passed up",
    counted: "moments",
    tells: "More moments than usual with the line on are not taken.",
  },
};

/** A share of matches as people say it: "1 match in 20". */
export const matchesIn = (alpha: number): string => `1 match in ${Math.max(1, Math.round(1 / alpha))}`;

/** How often an alert is false. SPEC WA23. */
export const falseAlarmWords = (alpha: number): string =>
  `About 1 alert in ${Math.max(1, Math.round(1 / alpha))} matches of a player who plays as usual, over all rates that are watched together.`;

/** Fewer words of staff than these say nothing of a watch. */
const ENOUGH_JUDGED = 20;

/** What staff found of a rate's alerts, and a proposal where most were of no use; undefined before anybody said. SPEC WA28. */
export const judgedWords = ({ x, n }: { readonly x: number; readonly n: number }): string | undefined => {
  if (n === 0) return undefined;
  const count = `Alerts called useful: ${x} of ${n}.`;
  return n >= ENOUGH_JUDGED && x / n < 0.5
    ? `${count} Fewer than half: think of taking this rate out.`
    : count;
};

/** What is watched, in a line: "Line balls missed, Kept balls missed. About 1 false alert in 20 matches. Quiet." */
export const choiceWords = ({ rates, alpha, quiet }: WatchChoice): string =>
  [
    `${rates.map((rate) => WATCHED_WORDS[rate].label).join(", ")}.`,
    `A false alert in about ${matchesIn(alpha)}.`,
    ...(quiet ? ["Quiet."] : []),
  ].join(" ");

/** What is usual for a player, with its range, whose past it is and on how many. SPEC WA26. */
export const usualWords = (rate: Rate, { mean, low, high, source, n }: UsualNow): string => {
  const pct = (share: number): number => Math.round(share * 100);
  const range = `${pct(low)} to ${pct(high)} in 100 in 9 matches of 10`;
  const own = `${n} own ${WATCHED_WORDS[rate].counted}`;
  const whose =
    source === "own"
      ? `Own level, on ${own}`
      : `Academy level; ${n === 0 ? `no ${own.slice(2)}` : own} so far`;
  return `Usually ${inTen(mean)} (${range}). ${whose}.`;
};

/** Why a rate that is chosen is not watched yet. SPEC WA25. */
export const tooFewWords = (rate: Rate, charted: number, needed: number): string =>
  `Not watched until the academy has charted ${needed} ${WATCHED_WORDS[rate].counted}; ${charted} so far.`;
