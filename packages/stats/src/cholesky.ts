/** The lower triangle L of a symmetric positive definite matrix, A = L·Lᵀ; rows from the first. */
export type LowerTriangle = readonly Float64Array[];

const at = (row: Float64Array | undefined, i: number): number => row?.[i] ?? 0;

/** The factor of a symmetric matrix given by its rows; `undefined` where it is not positive definite. */
export const cholesky = (matrix: readonly Float64Array[]): LowerTriangle | undefined => {
  const lower: Float64Array[] = [];
  for (const [i, row] of matrix.entries()) {
    const own = new Float64Array(matrix.length);
    for (let j = 0; j <= i; j++) {
      const other = j < i ? lower[j] : own;
      let sum = at(row, j);
      for (let k = 0; k < j; k++) sum -= at(own, k) * at(other, k);
      if (j === i && !(sum > 0)) return undefined;
      own[j] = j === i ? Math.sqrt(sum) : sum / at(other, j);
    }
    lower.push(own);
  }
  return lower;
};

/** The solution x of A·x = b. */
export const solveWith = (lower: LowerTriangle, b: Float64Array): Float64Array => {
  const x = Float64Array.from(b);
  for (let i = 0; i < x.length; i++) {
    let sum = at(x, i);
    for (let k = 0; k < i; k++) sum -= at(lower[i], k) * at(x, k);
    x[i] = sum / at(lower[i], i);
  }
  for (let i = x.length - 1; i >= 0; i--) {
    let sum = at(x, i);
    for (let k = i + 1; k < x.length; k++) sum -= at(lower[k], i) * at(x, k);
    x[i] = sum / at(lower[i], i);
  }
  return x;
};

/** The inverse of A, by its columns (which are its rows). */
export const inverseWith = (lower: LowerTriangle): readonly Float64Array[] =>
  lower.map((_, i) => {
    const unit = new Float64Array(lower.length);
    unit[i] = 1;
    return solveWith(lower, unit);
  });

/** ln det A. */
export const logDeterminant = (lower: LowerTriangle): number =>
  2 * lower.reduce((sum, row, i) => sum + Math.log(at(row, i)), 0);
