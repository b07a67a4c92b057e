/**
 * Near-field pressure at the centre of a piston over its far-field pressure at a distance in half space: 2r/a, for ka below 1.
 *
 * In full space (no baffle effect yet at that frequency) 4r/a. Source: D. B. Keele, "Low-frequency loudspeaker assessment by nearfield sound-pressure measurement", J. Audio
 * Eng. Soc. 22, 1974, 154 (from memory; limit of `axialPressureRatio`).
 */
export const nearToFarRatio = (radiusM: number, distanceM: number, space: 'half' | 'full'): number =>
  ((space === 'half' ? 2 : 4) * distanceM) / radiusM;

/** Axial pressure at a distance over that at the centre as ka → 0: √(1 + (r/a)²) − r/a. What a microphone that is not quite near reads. */
export const nearFieldDistanceRatio = (distanceOverRadius: number): number =>
  Math.sqrt(1 + distanceOverRadius ** 2) - distanceOverRadius;

/** Frequency at which ka = 1, Hz: the common upper limit of near-field measurements (diameter m). */
export const nearFieldLimitHz = (diameterM: number, soundSpeedMPerS: number): number =>
  soundSpeedMPerS / (Math.PI * diameterM);

/** Pressure at the centre of a piston in an infinite baffle over its low-frequency value jωρa u: |sin(ka/2)|/(ka/2). */
export const nearFieldCentreRatio = (ka: number): number => {
  const half = ka / 2;
  return half < 1e-8 ? 1 : Math.abs(Math.sin(half)) / half;
};

/**
 * Pressure on the axis of a flat round piston in an infinite baffle over ρcu, at any distance: 2 |sin(k(√(r² + a²) − r)/2)|.
 *
 * Exact. Source: L. E. Kinsler et al., Fundamentals of Acoustics, section 7.4.
 *
 * Example: a = 0.1 m, r = 0.3 m, 6 kHz: 1.556
 */
export const axialPressureRatio = (radiusM: number, distanceM: number, wavenumberPerM: number): number =>
  2 * Math.abs(Math.sin((wavenumberPerM / 2) * (Math.hypot(distanceM, radiusM) - distanceM)));

/** The far-field form of `axialPressureRatio`: k a²/(2r). */
export const farAxialPressureRatio = (radiusM: number, distanceM: number, wavenumberPerM: number): number =>
  (wavenumberPerM * radiusM ** 2) / (2 * distanceM);

/** Distance of the last axial maximum of a piston, m: a²/λ − λ/4; null where there is none (a below λ/2). */
export const lastAxialMaximumM = (radiusM: number, wavelengthM: number): number | null => {
  const distanceM = radiusM ** 2 / wavelengthM - wavelengthM / 4;
  return distanceM > 0 ? distanceM : null;
};

/** Rayleigh distance of a piston, m: πa²/λ. Beyond it the pressure falls as in the far field. */
export const rayleighDistanceM = (radiusM: number, wavelengthM: number): number =>
  (Math.PI * radiusM ** 2) / wavelengthM;

/**
 * Factor on a port's near-field pressure before it is added to the cone's: √(SV/SD), areas in m².
 *
 * Near-field pressure times radius goes with volume acceleration. Source: D. B. Keele 1974 (see `nearToFarRatio`).
 */
export const portNearFieldFactor = (portAreaM2: number, coneAreaM2: number): number =>
  Math.sqrt(portAreaM2 / coneAreaM2);
