import { findRoot } from '../../math/findRoot.ts';
import { alphaFromA2, type VentedAlignment, withHalfPower } from './ventedAlignment.ts';
import { ventedCoefficients } from './ventedTransfer.ts';

const HIGHEST_H = 30;

/**
 * Quasi-third-order Butterworth: flat for drivers of lower Q than B4 wants (QT from about 0.05 up to that of `ventedB4`).
 *
 * |G|⁻² = 1 + A ω⁻⁶ + ω⁻⁸, that is a1² = 2 a2 and a2² + 2 = 2 a1 a3; both fix h, then a2 fixes α. Leakage losses only. Above B4's QT
 * the same equations still have a solution with a slight droop or peak; the caller bounds the range.
 * Source: A. N. Thiele 1961/1971, alignments 1 to 4; R. H. Small 1973 (polynomial from memory, matched here).
 *
 * Example: ventedQb3(0.3, 7) = { h: 1.3145, alpha: 2.8452, f3OverFs: 1.5732, ... }
 */
export const ventedQb3 = (qt: number, ql: number | null): VentedAlignment => {
  const mismatch = (h: number): number => {
    const { a1, a3 } = ventedCoefficients({ h, alpha: 0, qt, ql });
    return a1 ** 4 / 4 + 2 - 2 * a1 * a3;
  };
  const h = findRoot(mismatch, 0.1, HIGHEST_H, 1e-14).x;
  const { a1 } = ventedCoefficients({ h, alpha: 0, qt, ql });
  return withHalfPower({ h, qt, ql, alpha: alphaFromA2(a1 ** 2 / 2, h, qt, ql) });
};
