import type { ByChoice, WonOf } from "./choice-fit.ts";

/** Logit of a rate with half a point added to either side, so that none is infinite: ln((won + ½)/(n − won + ½)); 0 without points. */
const smoothedLogit = ({ won, n }: WonOf): number => Math.log((won + 0.5) / (n - won + 0.5));

/** The academy's logits by situation and choice, from the points of all its players together. SPEC S31. */
export const academyLogits = (pooled: readonly ByChoice<WonOf>[]): readonly ByChoice<number>[] =>
  pooled.map(([first, second]) => [smoothedLogit(first), smoothedLogit(second)] as const);
