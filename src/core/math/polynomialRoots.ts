import { add, type Complex, complex, divide, magnitude, multiply, subtract } from './complex.ts';

/**
 * All roots of Σ c_k x^k (coefficients from the constant upwards, the last not 0), by Durand-Kerner iteration.
 *
 * For degrees up to about 20 with roots not clustered: relative error near 1e-14 for simple roots, about ε^(1/m) for an m-fold one.
 * Throws a RangeError on a zero leading coefficient. Conjugate pairs come out equal to rounding; order by real, then imaginary part.
 * Source: E. Durand 1960, I. Kerner 1966 (Weierstrass iteration; from memory).
 *
 * Example: polynomialRoots([2, -3, 1]) = 1 and 2
 */
export const polynomialRoots = (coefficients: readonly number[]): Complex[] => {
  const degree = coefficients.length - 1;
  const lead = coefficients[degree];
  if (lead === undefined || lead === 0 || !Number.isFinite(lead)) throw new RangeError('the leading coefficient is 0');
  if (degree === 0) return [];
  const monic = coefficients.map((c) => c / lead);
  // A circle of Fujiwara's size: no root lies outside, and the start has no symmetry that could stall the iteration.
  const radius =
    2 * Math.max(...monic.slice(0, degree).map((c, k) => Math.abs(c) ** (1 / (degree - k))), Number.MIN_VALUE);
  const value = (x: Complex): Complex => {
    let sum = complex(1);
    for (let k = degree - 1; k >= 0; k--) sum = add(multiply(sum, x), complex(monic[k]!));
    return sum;
  };
  let roots = monic.slice(0, degree).map((_, k) => {
    const angle = (2 * Math.PI * k) / degree + 0.4;
    return complex((radius / 2) * Math.cos(angle), (radius / 2) * Math.sin(angle));
  });
  for (let step = 0; step < 500; step++) {
    let largest = 0;
    roots = roots.map((root, i) => {
      let product = complex(1);
      for (let j = 0; j < degree; j++) if (j !== i) product = multiply(product, subtract(root, roots[j]!));
      if (magnitude(product) === 0) return add(root, complex(radius * 1e-6, radius * 1e-6));
      const change = divide(value(root), product);
      largest = Math.max(largest, magnitude(change));
      return subtract(root, change);
    });
    if (largest <= 1e-15 * radius) break;
  }
  // A real polynomial: what is real to rounding is real.
  return roots
    .map((r) => (Math.abs(r.im) < 1e-13 * radius ? complex(r.re) : r))
    .sort((a, b) => a.re - b.re || a.im - b.im);
};
