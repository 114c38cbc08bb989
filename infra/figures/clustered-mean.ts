/** Two-sided 95 % of the normal. */
export const Z95 = 1.959964;

/** A mean with its standard error. */
export interface ClusteredMean {
  readonly mean: number;
  /** Of what differs between the clusters; `NaN` of fewer than two. */
  readonly se: number;
}

/** Mean of values that are one cluster each (a player, an academy), so that what hangs together counts once. */
export const clusteredMean = (values: readonly number[]): ClusteredMean => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, se: Math.sqrt(squares / (values.length - 1) / values.length) };
};
