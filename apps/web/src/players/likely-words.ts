import { isTooFew } from "../loom/rate-words.ts";

const inHundred = (share: number): number => Math.round(share * 100);

/** "likely 27 to 81 in 100"; empty under five, where there is no interval to say. SPEC PF4. */
export const likelyWords = (rate: {
  readonly n: number;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}): string => {
  if (isTooFew(rate.n) || rate.low === undefined || rate.high === undefined) return "";
  return `likely ${inHundred(rate.low)} to ${inHundred(rate.high)} in 100`;
};
