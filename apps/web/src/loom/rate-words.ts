/** x of n with its 95 % interval, as shares of 1; the interval is absent when n = 0. */
export interface ShownRate {
  readonly x: number;
  readonly n: number;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

/** A player's usual rate: mean and the range it mostly falls in, as shares of 1. */
export interface ShownUsual {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** Below this count there is no shuttle, no cloth and no rate in words. SPEC rule BD6. */
export const FEWEST_FOR_A_RATE = 5;

export const isTooFew = (n: number): boolean => n < FEWEST_FOR_A_RATE;

/** "5 of 9". */
export const countWords = ({ x, n }: ShownRate): string => `${x} of ${n}`;

/** A share as people say it: "3 in 10"; "fewer than 1 in 10" for what rounds to none. */
export const inTen = (share: number): string => {
  const tens = Math.round(share * 10);
  return tens === 0 ? "fewer than 1 in 10" : `${tens} in 10`;
};

/** What follows a count: "none yet", "too few to say", "usually 3 in 10", or nothing where no usual rate is known. */
export const besideCount = (rate: ShownRate, usual?: ShownUsual): string => {
  if (rate.n === 0) return "";
  if (isTooFew(rate.n)) return "too few to say";
  return usual ? `usually ${inTen(usual.mean)}` : "";
};

const inHundred = (share: number): number => Math.round(share * 100);

/** The picture in words, for those who do not see it. */
export const rateSentence = (what: string, rate: ShownRate, usual?: ShownUsual): string => {
  if (rate.n === 0) return `${what}: none yet`;
  const count = `${what}: ${countWords(rate)}`;
  if (isTooFew(rate.n)) return `${count}, too few to say`;
  const likely =
    rate.low === undefined || rate.high === undefined
      ? ""
      : `, likely between ${inHundred(rate.low)} and ${inHundred(rate.high)} in 100`;
  return `${count}${likely}${usual ? `, usually ${inTen(usual.mean)}` : ""}`;
};
