import { legendreChi } from './legendreChi.ts';

/** dB to the octave for a slope of 1: |H| in proportion to f. */
export const DB_PER_OCTAVE = 20 * Math.log10(2);

/**
 * Phase in radians of a minimum-phase system whose level falls or rises by the same amount in every octave: 90 degrees for
 * 6.02 dB to the octave.
 *
 * Source: H. W. Bode, Network Analysis and Feedback Amplifier Design (1945), from memory; follows from the integral.
 * Example: `constantSlopePhaseRad(12.0412)` is π.
 */
export const constantSlopePhaseRad = (dbPerOctave: number): number => ((dbPerOctave / DB_PER_OCTAVE) * Math.PI) / 2;

/**
 * Phase in radians that a slope adds which begins at f0 and goes on above it; `slope` 1 is |H| in proportion to f,
 * `ratio` is f/f0 (above 0). It is also the error made by leaving such a tail out.
 *
 * (2n/π)(x + x³/9 + x⁵/25 + ...) below f0, nπ/4 at f0, nπ/2 less the value at 1/x above. Error below 1e-15.
 * Source: tables of phase associated with a semi-infinite unit slope of attenuation, Bell Laboratories (1947).
 * Example: `semiInfiniteSlopePhaseRad(1, 1)` is π/4.
 */
export function semiInfiniteSlopePhaseRad(slope: number, ratio: number): number {
  const below = (2 * slope * legendreChi(Math.abs(Math.log(ratio)))) / Math.PI;
  return ratio <= 1 ? below : (slope * Math.PI) / 2 - below;
}
