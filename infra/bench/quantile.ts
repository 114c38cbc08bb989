/**
 * The smallest value that at least the share `q` (0 to 1) of the values does not exceed; `NaN` of no values.
 * The order of the values does not matter.
 */
export const quantile = (values: readonly number[], q: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(q * sorted.length) - 1)] ?? Number.NaN;
};

export const median = (values: readonly number[]): number => quantile(values, 0.5);
