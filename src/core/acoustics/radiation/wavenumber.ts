/** Wavenumber k = 2πf/c, rad/m. */
export const wavenumberPerM = (frequencyHz: number, soundSpeedMPerS: number): number =>
  (2 * Math.PI * frequencyHz) / soundSpeedMPerS;

/** Radius in units of 1/k, the ka of the textbooks: 2πfa/c. */
export const kaOf = (radiusM: number, frequencyHz: number, soundSpeedMPerS: number): number =>
  wavenumberPerM(frequencyHz, soundSpeedMPerS) * radiusM;

/** Wavelength c/f, m. */
export const wavelengthM = (frequencyHz: number, soundSpeedMPerS: number): number => soundSpeedMPerS / frequencyHz;
