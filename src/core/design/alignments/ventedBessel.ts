import { type VentedAlignment, ventedFromCoefficients } from './ventedAlignment.ts';

/**
 * Fourth-order Bessel: maximally flat delay, gentle roll-off, least ringing; leak QL (null: none).
 *
 * a1 = 105^¼, a2 = 45/√105, a3 = 10/105^¼ (Bessel polynomial of degree 4 as a high-pass); null where the leak is too strong.
 * Source: W. E. Thomson 1949 for the polynomial; R. M. Bullock, "Alternative alignments" (name and use, from memory).
 *
 * Example: ventedBessel(null) = { qt: 0.3162, h: 0.9759, alpha: 2.3333, f3OverFs: 1.4959 }
 */
export const ventedBessel = (ql: number | null): VentedAlignment | null => {
  const root = 105 ** 0.25;
  return ventedFromCoefficients({ a1: root, a2: 45 / Math.sqrt(105), a3: 10 / root }, ql);
};
