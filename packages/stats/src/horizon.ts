/** Attempts a threshold is designed for when too little is known of how many a player makes. */
const DEFAULT_ATTEMPTS = 40;
/** Past matches below which their number of attempts says too little (a judgement). */
const MIN_PAST = 5;
const SHORTEST = 20;
const LONGEST = 80;

/**
 * For how many attempts N a player's watch is designed: the 90th percentile (nearest rank) of the attempts in past matches, rounded up
 * to ten, within 20 and 80; 40 with fewer than five past matches. Matches without an attempt are left out. SPEC S17.
 */
export const designAttempts = (past: readonly number[]): number => {
  const known = past.filter((n) => n > 0).sort((a, b) => a - b);
  if (known.length < MIN_PAST) return DEFAULT_ATTEMPTS;
  const percentile = known[Math.ceil(0.9 * known.length) - 1] ?? DEFAULT_ATTEMPTS;
  return Math.min(LONGEST, Math.max(SHORTEST, Math.ceil(percentile / 10) * 10));
};
