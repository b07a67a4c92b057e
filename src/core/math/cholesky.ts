/**
 * Lower triangular factor L with L Lᵀ = A of a symmetric positive definite matrix (rows one after another, n by n), or null where
 * a pivot falls below `leastPivot` of its diagonal entry: the columns then depend on one another.
 *
 * Source: A.-L. Cholesky, as in G. H. Golub and C. F. Van Loan, Matrix Computations, section 4.2 (from memory).
 * Example: choleskyFactor(new Float64Array([4]), 1, 1e-14) is [2]
 */
export const choleskyFactor = (matrix: Float64Array, n: number, leastPivot: number): Float64Array | null => {
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= lower[i * n + k]! * lower[j * n + k]!;
      if (i !== j) lower[i * n + j] = sum / lower[j * n + j]!;
      else if (sum > leastPivot * matrix[i * n + i]! && sum > 0) lower[i * n + i] = Math.sqrt(sum);
      else return null;
    }
  }
  return lower;
};

/** Solves L Lᵀ x = b for the factor of `choleskyFactor`. */
export const choleskySolve = (lower: Float64Array, n: number, b: ArrayLike<number>): Float64Array => {
  const x = Float64Array.from(b);
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i] = x[i]! - lower[i * n + k]! * x[k]!;
    x[i] = x[i]! / lower[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i] = x[i]! - lower[k * n + i]! * x[k]!;
    x[i] = x[i]! / lower[i * n + i]!;
  }
  return x;
};

/** The inverse of L Lᵀ, rows one after another. */
export const choleskyInverse = (lower: Float64Array, n: number): Float64Array => {
  const inverse = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const unit = new Float64Array(n);
    unit[j] = 1;
    const column = choleskySolve(lower, n, unit);
    for (let i = 0; i < n; i++) inverse[i * n + j] = column[i]!;
  }
  return inverse;
};
