/**
 * The Butterworth polynomial of any order from 1, 3.01 dB down at 1, coefficients from the constant upwards:
 * a_k = a_(k-1) cos((k-1) π/2n) / sin(k π/2n).
 * Source: S. Butterworth, "On the theory of filter amplifiers", Wireless Engineer 7, 1930; the recursion after
 * L. Weinberg, Network Analysis and Synthesis, 1962 (from memory).
 * @example butterworthPolynomial(3) // 1, 2, 2, 1
 */
export function butterworthPolynomial(order: number): number[] {
  if (!Number.isInteger(order) || order < 1) throw new RangeError(`There is no Butterworth filter of order ${order}.`);
  const step = Math.PI / (2 * order);
  const coefficients = [1];
  for (let k = 1; k <= order; k++) {
    coefficients.push((coefficients[k - 1]! * Math.cos((k - 1) * step)) / Math.sin(k * step));
  }
  // The polynomial reads the same from both ends; the first half has fewer roundings.
  return coefficients.map((c, k) => (k > order / 2 ? coefficients[order - k]! : c));
}
