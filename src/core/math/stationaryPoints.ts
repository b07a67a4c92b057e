import { positiveRoots } from './positiveRoots.ts';

/**
 * Where the quotient of two polynomials has slope zero between 0 and `to`, ascending: roots of N'D − ND' (coefficients from the constant upwards).
 *
 * The caller keeps D away from zero there. Accuracy and limits as `positiveRoots`.
 *
 * Example: stationaryPoints([0, 1], [1, 0, 1], 10) = [1], the top of x/(1 + x²)
 */
export const stationaryPoints = (
  numerator: readonly number[],
  denominator: readonly number[],
  to: number,
): number[] => {
  const slope = new Array<number>(numerator.length + denominator.length - 1).fill(0);
  for (let n = 0; n < numerator.length; n++) {
    for (let d = 0; d < denominator.length; d++) {
      // N'D − ND' of the monomials xⁿ and xᵈ is (n − d) xⁿ⁺ᵈ⁻¹.
      if (n !== d) slope[n + d - 1]! += (n - d) * numerator[n]! * denominator[d]!;
    }
  }
  // Zeros at the origin are no points between.
  const first = slope.findIndex((coefficient) => coefficient !== 0);
  return first < 0 ? [] : positiveRoots(slope.slice(first), to);
};
