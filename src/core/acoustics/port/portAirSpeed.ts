/** Mean air speed in a bore, in the sense (rms or peak) of the volume velocity, m/s: v = U/S. */
export const portAirSpeedMPerS = (volumeVelocityM3PerS: number, areaM2: number): number =>
  volumeVelocityM3PerS / areaM2;

/** Mach number of an air speed (give the peak speed). Common practice: below 0.05 straight ports stay quiet. */
export const machNumber = (speedMPerS: number, soundSpeedMPerS: number): number => speedMPerS / soundSpeedMPerS;

/**
 * Volume velocity that makes a pressure at a distance in half space, same sense (rms or peak), m³/s: U = p r/(ρ f).
 *
 * Source: simple source on an infinite baffle, L. L. Beranek, Acoustics, 1954, section 4.3 (from memory).
 *
 * Example: 2 Pa rms at 1 m and 30 Hz need 0.0554 m³/s rms.
 */
export const volumeVelocityForPressure = (
  pressurePa: number,
  frequencyHz: number,
  distanceM: number,
  densityKgPerM3: number,
): number => (pressurePa * distanceM) / (densityKgPerM3 * frequencyHz);
