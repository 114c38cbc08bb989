import { type Bar, pct } from "../bar.ts";

/** Standard errors that chance alone leaves between matches and the recursion. */
const APART = 3;

/**
 * Whether matches played through the watch have as many alerts as exact recursion gives the same players; `se` is the
 * matches' own standard error, the players being who they are. SPEC OP4.
 */
export const agrees = (what: string, simulated: number, exact: number, se: number): Bar => ({
  kept: Math.abs(simulated - exact) <= APART * se,
  says: `${what}: ${pct(simulated, 2)} of matches as played, ${pct(exact, 2)} by exact recursion for the same players (at most ${APART} standard errors of ${(100 * se).toFixed(2)} apart)`,
});
