import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";

/** Numbers in (0, 1) that a seed fixes (mulberry32); for tests only. */
export const seeded = (seed: number): (() => number) => {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return (((t ^ (t >>> 14)) >>> 0) + 0.5) / 4294967296;
  };
};

/** How many of n attempts are events at rate p. */
export const drawCount = (random: () => number, n: number, p: number): number => {
  let x = 0;
  for (let i = 0; i < n; i++) if (random() < p) x++;
  return x;
};

export const drawBeta = (random: () => number, a: number, b: number): number => betaQuantile(random(), a, b);

/** Normal with mean 0 (Box and Muller 1958). */
export const drawNormal = (random: () => number, sd: number): number =>
  sd * Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
