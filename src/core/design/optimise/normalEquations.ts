/** A symmetric matrix by rows. */
export type Matrix = readonly Float64Array[];

/** JᵀJ and Jᵀr of a Jacobian given by columns. */
export function normalEquations(
  jacobian: readonly Float64Array[],
  residuals: Float64Array,
): { readonly matrix: Float64Array[]; readonly right: Float64Array } {
  const size = jacobian.length;
  const matrix = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const a = jacobian[i]!;
    for (let j = 0; j <= i; j++) {
      const b = jacobian[j]!;
      let sum = 0;
      for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!;
      matrix[i]![j] = sum;
      matrix[j]![i] = sum;
    }
    let sum = 0;
    for (let k = 0; k < a.length; k++) sum += a[k]! * residuals[k]!;
    right[i] = sum;
  }
  return { matrix, right };
}

/**
 * Lower triangle L with L Lᵀ the matrix; null where it is not positive definite.
 * Source: Cholesky's factorisation, as in G. Golub, C. Van Loan, Matrix Computations, section 4.2 (from memory).
 */
export function lowerTriangle(matrix: Matrix): Float64Array[] | null {
  const size = matrix.length;
  const lower = Array.from({ length: size }, () => new Float64Array(size));
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]![j]!;
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!;
      if (i === j) {
        if (!(sum > 0)) return null;
        lower[i]![i] = Math.sqrt(sum);
      } else lower[i]![j] = sum / lower[j]![j]!;
    }
  }
  return lower;
}

/** x with L Lᵀ x = b. */
export function solveTriangles(lower: Matrix, b: Float64Array): Float64Array {
  const size = b.length;
  const x = b.slice();
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) x[i]! -= lower[i]![k]! * x[k]!;
    x[i]! /= lower[i]![i]!;
  }
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) x[i]! -= lower[k]![i]! * x[k]!;
    x[i]! /= lower[i]![i]!;
  }
  return x;
}

/** The rows and columns of a matrix that are listed, in that order. */
export const partOf = (matrix: Matrix, which: readonly number[]): Float64Array[] =>
  which.map((i) => Float64Array.from(which, (j) => matrix[i]![j]!));
