import type { AirProperties } from '../../acoustics/airProperties.ts';
import { chamberComplianceM3PerPa } from '../../acoustics/chamber.ts';
import type { DriverParameters } from '../../acoustics/driver/driverParameters.ts';

/** Motion and output of a driver in a sealed box at one frequency. */
export interface SealedMotion {
  /** One-way peak, m. */
  readonly excursionPeakM: number;
  /** Pa rms in half space. */
  readonly pressurePa: number;
}

/**
 * Cone excursion and pressure of a driver in a lossless sealed box (apparent volume m³) at an rms voltage: one closed formula.
 *
 * x = Bl V √2/Re / (ω |Rms + Bl²/Re + j(ωMms − 1/(ωCms) − Sd²/(ωCab))|), p = ρ ω² Sd x/(2π r √2). Coil inductance is left out: below some
 * 200 Hz. The full circuit is `simulate`; this is its check. Source: R. H. Small 1972 (see `sealedInVolume`), derived.
 *
 * Example: see the test.
 */
export const sealedMotion = (
  driver: Omit<DriverParameters, 'leH' | 'semiInductance'>,
  at: { readonly volumeM3: number; readonly distanceM: number },
  voltageV: number,
  frequencyHz: number,
  air: AirProperties,
): SealedMotion => {
  const omega = 2 * Math.PI * frequencyHz;
  const { reOhm, blTm, mmsKg, cmsMPerN, rmsKgPerS, sdM2 } = driver;
  const stiffness = 1 / cmsMPerN + sdM2 ** 2 / chamberComplianceM3PerPa(at.volumeM3, air);
  const impedance = Math.hypot(rmsKgPerS + blTm ** 2 / reOhm, omega * mmsKg - stiffness / omega);
  const excursionPeakM = (blTm * voltageV * Math.SQRT2) / (reOhm * omega * impedance);
  const pressurePa =
    (air.densityKgPerM3 * omega ** 2 * sdM2 * excursionPeakM) / (2 * Math.PI * at.distanceM * Math.SQRT2);
  return { excursionPeakM, pressurePa };
};
