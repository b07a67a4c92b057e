/**
 * Taps of the filter with one zero, H(z) = 1 − a z⁻¹; minimum phase for |a| < 1.
 * Source: A. V. Oppenheim, R. W. Schafer, Discrete-Time Signal Processing, chapter 5 (from memory).
 * @example oneZeroTaps(0.6) // [1, -0.6]
 */
export const oneZeroTaps = (a: number): readonly [number, number] => [1, -a];
