import { alphaFromA2, type VentedAlignment, withHalfPower } from './ventedAlignment.ts';
import { ventedCoefficients } from './ventedTransfer.ts';

/**
 * Box tuned to the driver's resonance (h = 1) with a1² = 2 a2: large box, low f3 slope gentle at first; B4 is its case QT = 0.3827.
 *
 * Lossless: α = 1/(2 QT²) − 2. Leakage losses only; α falls to 0 at the highest QT that it can serve.
 * Source: the "super fourth-order boom box" of W. J. J. Hoge, 1978 (definition from memory, unverified).
 *
 * Example: ventedBb4(0.3, null) = { h: 1, alpha: 3.5556, f3OverFs: 1.8101 }
 */
export const ventedBb4 = (qt: number, ql: number | null): VentedAlignment => {
  const { a1 } = ventedCoefficients({ h: 1, alpha: 0, qt, ql });
  return withHalfPower({ h: 1, qt, ql, alpha: alphaFromA2(a1 ** 2 / 2, 1, qt, ql) });
};
