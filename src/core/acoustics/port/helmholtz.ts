/**
 * Resonance of air in a neck against air in a volume, Hz: f = (c/2π) √(S/(V L)).
 *
 * S total section of the necks (m²), L effective length (m; with end corrections unless a bare figure is wanted), V apparent volume
 * (m³). Lossless; volume and neck small against the wavelength. Several unlike ports: give S = Σ S_i/L_i with L = 1.
 * Source: H. von Helmholtz 1860; Lord Rayleigh, Theory of Sound, 1896, section 304.
 *
 * Example: helmholtzHz({ areaM2: 3e-4, effectiveLengthM: 0.084, volumeM3: 7.5e-4 }, 343.2) = 119.2
 */
export const helmholtzHz = (
  resonator: { readonly areaM2: number; readonly effectiveLengthM: number; readonly volumeM3: number },
  soundSpeedMPerS: number,
): number =>
  (soundSpeedMPerS / (2 * Math.PI)) * Math.sqrt(resonator.areaM2 / (resonator.volumeM3 * resonator.effectiveLengthM));

/** The inverse: effective neck length that tunes a volume to a frequency, m. L = c² S/(4π² f² V). */
export const helmholtzNeckM = (
  resonator: { readonly areaM2: number; readonly tuningHz: number; readonly volumeM3: number },
  soundSpeedMPerS: number,
): number => (soundSpeedMPerS ** 2 * resonator.areaM2) / ((2 * Math.PI * resonator.tuningHz) ** 2 * resonator.volumeM3);
