/**
 * The error rate of each of `streams` watches (≥ 1) so that any of them raises falsely with probability `alpha` in all, if they are
 * independent: 1 − (1 − α)^(1/k). SPEC S20; source: Šidák 1967.
 */
export const sidakSplit = (alpha: number, streams: number): number =>
  -Math.expm1(Math.log1p(-alpha) / streams);

/** The same, safe however the watches hang together: α/k. SPEC S20; source: Bonferroni 1936. */
export const bonferroniSplit = (alpha: number, streams: number): number => alpha / streams;
