import type { AlertCount, AlertLine, AlertRun } from "@courtloom/protocol";
import { countWords, inTen, isTooFew } from "../loom/rate-words.ts";
import { RATE_NAMES } from "./rate-names.ts";

type Told = Pick<AlertLine, "key" | "match" | "usual" | "source" | "since">;

const ORDINALS = ["first", "second", "third", "fourth", "fifth"];

/** "2–1 in the second": games from the player's side, with the set. */
export const momentWords = ({ set, games }: Pick<AlertRun, "set" | "games">): string =>
  `${games[0]}–${games[1]} in the ${ORDINALS[set - 1] ?? `${set}th`}`;

/** "usually 3 in 10", "academy level 3 in 10" while the player's own past is too short, "too few to say" under five. SPEC rule AS11. */
export const usualWords = ({ match, usual, source }: Pick<Told, "match" | "usual" | "source">): string => {
  if (isTooFew(match.n)) return "too few to say";
  return source === "own" ? `usually ${inTen(usual)}` : `academy level ${inTen(usual)}`;
};

/** "8 were off plan"; null where none is known to be, or the count is of just that. */
export const offPlanWords = ({ key, match }: Pick<Told, "key" | "match">): string | null => {
  if (match.offPlan === 0 || RATE_NAMES[key.rate].saysPlan) return null;
  return `${match.offPlan} ${match.offPlan === 1 ? "was" : "were"} off plan`;
};

/** "10 of 14 line balls missed". */
export const countSentence = ({ key, match }: Pick<Told, "key" | "match">): string =>
  `${countWords(match)} ${RATE_NAMES[key.rate].counted}`;

/** What follows the count: "usually 3 in 10; 8 were off plan; since 2–1 in the second." */
export const restOfSentence = (line: Told): string => {
  const since = line.since ? `since ${momentWords(line.since)}` : null;
  return `${[usualWords(line), offPlanWords(line), since].filter((part) => part !== null).join("; ")}.`;
};

/**
 * What happened on how many against which usual rate, how many were off plan, and since when:
 * "10 of 14 line balls missed, usually 3 in 10; 8 were off plan; since 2–1 in the second." SPEC rule AS10.
 */
export const alertSentence = (line: Told): string => `${countSentence(line)}, ${restOfSentence(line)}`;

/** "9 of 12 since then"; null without a run, or where the run is the whole match. */
export const runWords = ({ match, since }: Pick<Told, "match" | "since">): string | null =>
  since === undefined || since.n === match.n ? null : `${countWords(since)} since then`;

const inHundred = (share: number): number => Math.round(share * 100);

/** Not to be parted at the end of a line. */
const told = (n: number): string => `n\u00a0=\u00a0${n}`;

/** "95 % interval 45 to 88 in 100, n = 14"; under five only the n. SPEC rule AS12. */
export const intervalWords = ({ n, low, high }: AlertCount): string =>
  isTooFew(n) ? told(n) : `95 % interval ${inHundred(low)} to ${inHundred(high)} in 100, ${told(n)}`;
