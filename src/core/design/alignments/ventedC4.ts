import { findRoot } from '../../math/findRoot.ts';
import { boxFromCoefficients, type VentedAlignment, withHalfPower } from './ventedAlignment.ts';
import type { VentedBox, VentedCoefficients } from './ventedTransfer.ts';

/** A Chebyshev (k below 1) or sub-Chebyshev (k above 1) vented box. */
export interface ChebyshevAlignment extends VentedAlignment {
  /** Factor on the real parts of the Butterworth poles. */
  readonly k: number;
}

/**
 * Ripple of the Chebyshev alignment with pole factor k, as the ratio of greatest to least amplitude in the band, 1 at k = 1.
 *
 * 10 lg(1 + (1 − k²)⁴/(16 k² (1 + k²)²)) in dB; a form with 28 K in place of 128 K circulates in print and is wrong (derived).
 *
 * Example: 20 lg chebyshevRipple(0.5) = 0.2145 dB
 */
export const chebyshevRipple = (k: number): number => Math.sqrt(1 + (1 - k * k) ** 4 / (16 * k * k * (1 + k * k) ** 2));

/** Coefficients of the high-pass whose low-pass poles are Butterworth's with their real parts times k. */
export const chebyshevCoefficients = (k: number): VentedCoefficients => {
  const pair = (angle: number) => ({
    b: 2 * k * Math.sin(angle),
    c: (k * Math.sin(angle)) ** 2 + Math.cos(angle) ** 2,
  });
  const first = pair(Math.PI / 8);
  const second = pair((3 * Math.PI) / 8);
  const product = first.c * second.c;
  return {
    a1: (first.b * second.c + second.b * first.c) / product ** 0.75,
    a2: (first.c + second.c + first.b * second.b) / Math.sqrt(product),
    a3: (first.b + second.b) / product ** 0.25,
  };
};

/** As far from Butterworth as the search goes: a ripple of 3.8 dB below, hardly any change of shape above. */
const LEAST_K = 0.2;
const MOST_K = 12;

/**
 * Fourth-order Chebyshev for drivers of higher Q than B4 wants (k < 1: ripple, lower f3), sub-Chebyshev for lower Q (k > 1).
 *
 * Finds the pole factor k between 0.2 and 12 that suits QT with the leak QL (null: none); null where none does (lossless: QT from
 * 0.25 to 0.9; a leak narrows it). Leakage losses only. Source: A. N. Thiele 1961/1971, alignments 6 to 9; R. H. Small 1973 (pole
 * construction from memory, matched here).
 *
 * Example: ventedC4(0.5, 7) = { k: 0.597, h: 0.8031, alpha: 0.4642, f3OverFs: 0.7155, ... }
 */
export const ventedC4 = (qt: number, ql: number | null): ChebyshevAlignment | null => {
  const at = (k: number): VentedBox | null => boxFromCoefficients(chebyshevCoefficients(k), ql);
  const middle = at(1);
  if (middle === null) return null;
  // QT falls as k grows; step outwards until QT is passed, in shorter strides where the leak ends the boxes.
  let stride = qt > middle.qt ? 0.96 : 1.04;
  for (let near = 1; near > LEAST_K && near < MOST_K && Math.abs(stride - 1) > 1e-5; ) {
    const far = at(near * stride);
    if (far === null) {
      stride = Math.sqrt(stride);
    } else if ((far.qt - qt) * (middle.qt - qt) > 0) {
      near *= stride;
    } else {
      const k = findRoot((factor) => at(factor)!.qt - qt, near, near * stride, 1e-14).x;
      return { ...withHalfPower({ ...at(k)!, qt }), k };
    }
  }
  return null;
};
