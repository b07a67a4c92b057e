/**
 * Frequencies at which a port's bore stands in half waves, Hz: f_k = k c/(2 Leff), k = 1 ... count.
 *
 * `effectiveLengthM` with both low-frequency end corrections. These shrink as the mouth grows against the wavelength, so the real ones
 * lie higher: by 1.3 % and 4 % for the first two of a 70 mm tube, 0.2 m long (exact open ends: 692 and 1424 Hz against 683 and 1366).
 * The chamber's own modes move them too. Source: open pipe, textbook.
 *
 * Example: tubeResonancesHz(0.2512, 343.2, 2) = [683, 1366]
 */
export const tubeResonancesHz = (effectiveLengthM: number, soundSpeedMPerS: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, k) => ((k + 1) * soundSpeedMPerS) / (2 * effectiveLengthM));
