/** Wavenumber k = 2πf/c, rad/m. */
export const wavenumberPerM = (frequencyHz: number, soundSpeedMPerS: number): number =>
  (2 * Math.PI * frequencyHz) / soundSpeedMPerS;

/** Wavelength c/f, m. */
export const wavelengthM = (frequencyHz: number, soundSpeedMPerS: number): number => soundSpeedMPerS / frequencyHz;
