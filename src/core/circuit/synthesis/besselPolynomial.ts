import { magnitude } from '../../math/complex.ts';
import { findRoot } from '../../math/findRoot.ts';
import { polynomialAt } from './transferFunction.ts';

/**
 * What is 1 at the corner 1: `delay`, the group delay at low frequencies; `phase`, the geometric mean of the poles, so that
 * the phases of low- and high-pass meet there; `3dB`, the frequency 3.01 dB down.
 */
export type BesselNormalisation = 'delay' | 'phase' | '3dB';

/**
 * Denominator of the Bessel (Thomson) low-pass, coefficients from the constant (1) upwards. The reverse Bessel polynomial
 * has the coefficients (2n-k)! / (2^(n-k) k! (n-k)!).
 * Source: W. E. Thomson, "Delay networks having maximally flat frequency characteristics", Proc. IEE 96 (III), 1949.
 * @example besselPolynomial(2, 'phase') // 1, √3, 1
 */
export function besselPolynomial(order: number, normalisation: BesselNormalisation): number[] {
  if (!Number.isInteger(order) || order < 1) throw new RangeError(`There is no Bessel filter of order ${order}.`);
  // c_k / c_0, each from the one before: (n-k+1) 2 / (k (2n-k+1)).
  const delay = [1];
  for (let k = 1; k <= order; k++) {
    delay.push((delay[k - 1]! * 2 * (order - k + 1)) / (k * (2 * order - k + 1)));
  }
  if (normalisation === 'delay') return delay;
  const corner = normalisation === 'phase' ? delay[order]! ** (-1 / order) : halfPower(delay);
  const scaled = delay.map((c, k) => c * corner ** k);
  return normalisation === 'phase' ? scaled.map((c, k) => (k === order ? 1 : c)) : scaled;
}

/** Where the magnitude has fallen to 1/√2. The magnitude of a Bessel polynomial grows with frequency throughout. */
function halfPower(polynomial: readonly number[]): number {
  const excess = (omega: number): number => magnitude(polynomialAt(polynomial, { re: 0, im: omega })) - Math.SQRT2;
  return findRoot(excess, 0.5, 2 * polynomial.length, 0).x;
}
