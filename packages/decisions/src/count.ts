import type { Count } from "./figures.ts";

export const NO_COUNT: Count = { x: 0, n: 0, hits: [], others: [] };

/** One more attempt, made in the point with entry id `pointId`. */
export const countAttempt = (count: Count, hit: boolean, pointId: string): Count => ({
  x: count.x + (hit ? 1 : 0),
  n: count.n + 1,
  hits: hit ? [...count.hits, pointId] : count.hits,
  others: hit ? count.others : [...count.others, pointId],
});
