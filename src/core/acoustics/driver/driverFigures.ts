import type { AirProperties } from '../airProperties.ts';
import type { DriverParameters } from './driverParameters.ts';
import { halfSpaceSensitivityDb, referenceEfficiency } from './sensitivity.ts';

/** What the trade reads off a driver, all worked out from its lumped parameters. */
export interface DriverFigures {
  readonly fsHz: number;
  readonly qms: number;
  readonly qes: number;
  readonly qts: number;
  readonly vasM3: number;
  /** Acoustic over electrical power into Re, half space, well above resonance. */
  readonly efficiency: number;
  /** dB re 20 µPa at 1 m in half space, 1 W into Re. */
  readonly sensitivityDb1W: number;
  /** The same for √8 V. */
  readonly sensitivityDb2V83: number;
  /** fs/Qes, Hz: common practice reads below about 50 as sealed, above 100 as vented. */
  readonly efficiencyBandwidthHz: number;
  /** Impedance at resonance, coil inductance left out, ohm. */
  readonly zMaxOhm: number;
  /** Parallel circuit that the moving parts show electrically. */
  readonly resOhm: number;
  readonly cmesF: number;
  readonly lcesH: number;
}

/**
 * Thiele and Small's numbers of a driver; Vas, efficiency and sensitivity for the given air.
 *
 * Small signals, cone as one piece, coil inductance ignored in the sensitivities. Exact in the lumped model.
 * Source: R. H. Small, "Direct-Radiator Loudspeaker System Analysis", J. Audio Eng. Soc. 20, 1972, 383 (from memory).
 *
 * Example: Mms 22 g and Cms 0.9 mm/N give fs = 35.77 Hz.
 */
export const driverFigures = (p: DriverParameters, air: AirProperties): DriverFigures => {
  const z = Math.sqrt(p.mmsKg / p.cmsMPerN);
  const fsHz = 1 / (2 * Math.PI * Math.sqrt(p.mmsKg * p.cmsMPerN));
  const motor = p.blTm ** 2;
  const qms = z / p.rmsKgPerS;
  const qes = (z * p.reOhm) / motor;
  const efficiency = referenceEfficiency(p, air);
  const sensitivityDb1W = halfSpaceSensitivityDb(efficiency, air);
  return {
    fsHz,
    qms,
    qes,
    qts: z / (p.rmsKgPerS + motor / p.reOhm),
    vasM3: air.densityKgPerM3 * air.soundSpeedMPerS ** 2 * p.sdM2 ** 2 * p.cmsMPerN,
    efficiency,
    sensitivityDb1W,
    sensitivityDb2V83: sensitivityDb1W + 10 * Math.log10(8 / p.reOhm),
    efficiencyBandwidthHz: fsHz / qes,
    zMaxOhm: p.reOhm + motor / p.rmsKgPerS,
    resOhm: motor / p.rmsKgPerS,
    cmesF: p.mmsKg / motor,
    lcesH: p.cmsMPerN * motor,
  };
};
