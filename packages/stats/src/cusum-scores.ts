/** Points per nat of evidence: integers, so that every platform agrees bit for bit. */
const PER_NAT = 100;
/** The worsening that a watch is tuned for: odds of an event times 2.5, between a doubling and a trebling. */
export const DESIGN_ODDS_RATIO = 2.5;

/** What one attempt adds to the evidence that the rate is worse than usual: `up` for an event, `down` taken off for none. */
export interface CusumScores {
  readonly up: number;
  readonly down: number;
}

/** The probability whose odds are `oddsRatio` times those of `p`, in [0, 1]. */
export const withOdds = (p: number, oddsRatio: number): number => (oddsRatio * p) / (1 - p + oddsRatio * p);

/**
 * Integer log-likelihood-ratio scores for one attempt with usual rate `p` in (0, 1), against odds `oddsRatio` (> 1) times as high:
 * down = round(100·ln(1 + (R − 1)p)), up = round(100·(ln R − ln(1 + (R − 1)p))), neither below 0.
 * Attempts in different situations may each have scores of their own rate (risk adjustment).
 * SPEC S10; sources: Page 1954; Steiner, Cook, Farewell and Treasure 2000.
 */
export const cusumScores = (p: number, oddsRatio: number = DESIGN_ODDS_RATIO): CusumScores => {
  const log = Math.log(1 + (oddsRatio - 1) * p);
  return { up: Math.round(PER_NAT * (Math.log(oddsRatio) - log)), down: Math.round(PER_NAT * log) };
};
