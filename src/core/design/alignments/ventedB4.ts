import { type VentedAlignment, ventedFromCoefficients } from './ventedAlignment.ts';

/**
 * Fourth-order Butterworth: the flattest vented box there is, and the one driver Q that reaches it for a given leak QL (null: none).
 *
 * a1 = a3 = √(4 + 2√2), a2 = 2 + √2; h = 1, f3 = fs, QT = 1/(a1 − 1/QL). Leakage losses only; null for a
 * QL below 1.31, which leaves no volume.
 * Source: A. N. Thiele, "Loudspeakers in Vented Boxes", 1961/1971, alignment 5; R. H. Small, "Vented-Box Loudspeaker Systems", 1973.
 *
 * Example: ventedB4(7) = { qt: 0.4048, h: 1, alpha: 1.061, f3OverFs: 1 }
 */
export const ventedB4 = (ql: number | null): VentedAlignment | null => {
  const a1 = Math.sqrt(4 + 2 * Math.SQRT2);
  return ventedFromCoefficients({ a1, a2: 2 + Math.SQRT2, a3: a1 }, ql);
};
