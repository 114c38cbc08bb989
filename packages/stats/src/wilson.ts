/** The 97.5 % point of the standard normal, for two-sided 95 % intervals. */
const Z95 = 1.959963984540054;

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * Wilson's score interval for a proportion: x of n, 95 % two-sided unless `z` says otherwise, both ends in [0, 1].
 * `undefined` when n = 0 (nothing is known). Exactly 0 below at x = 0 and 1 above at x = n.
 * Valid for one look, not for watching continuously. SPEC S1; source: E. B. Wilson 1927,
 * recommended for small n by Brown, Cai and DasGupta 2001.
 */
export const wilson = (x: number, n: number, z: number = Z95): Interval | undefined => {
  if (n <= 0) return undefined;
  const p = x / n;
  const z2 = z * z;
  const scale = 1 + z2 / n;
  const centre = (p + z2 / (2 * n)) / scale;
  const half = (z * Math.sqrt((p * (1 - p)) / n + z2 / (4 * n * n))) / scale;
  return { low: x === 0 ? 0 : centre - half, high: x === n ? 1 : centre + half };
};
