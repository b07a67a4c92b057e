import type { AirProperties } from '../airProperties.ts';

/** Peak volume displacement, m³: effective area (m²) times one-way peak excursion (m). */
export const volumeDisplacementM3 = (sdM2: number, peakM: number): number => sdM2 * peakM;

/**
 * Pressure of a peak volume displacement at a distance, Pa rms: ρ ω² VD/(2π r √2) in half space, half of it in full space.
 *
 * Source small against the wavelength. Source: simple source, L. L. Beranek, Acoustics, 1954, section 4.3 (from memory).
 *
 * Example: 129.6 cm³ at 40 Hz and 1 m: 1.11 Pa, 94.9 dB
 */
export const pressureFromDisplacementPa = (
  displacementM3: number,
  frequencyHz: number,
  distanceM: number,
  densityKgPerM3: number,
  space: 'half' | 'full',
): number =>
  (densityKgPerM3 * (2 * Math.PI * frequencyHz) ** 2 * displacementM3) /
  ((space === 'half' ? 2 : 4) * Math.PI * distanceM * Math.SQRT2);

/** Acoustic power of a peak volume displacement into half space, W: ρ ω⁴ VD²/(4π c). */
export const powerFromDisplacementW = (displacementM3: number, frequencyHz: number, air: AirProperties): number =>
  (air.densityKgPerM3 * (2 * Math.PI * frequencyHz) ** 4 * displacementM3 ** 2) / (4 * Math.PI * air.soundSpeedMPerS);
