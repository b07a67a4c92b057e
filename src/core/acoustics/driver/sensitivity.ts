import type { AirProperties } from '../airProperties.ts';
import type { DriverParameters } from './driverParameters.ts';

const REFERENCE_PA = 20e-6;

/** ρ/(2πc), m²·s/kg: the factor of (Bl Sd/Mms)²/Re in the reference efficiency. */
export const efficiencyFactor = (air: AirProperties): number =>
  air.densityKgPerM3 / (2 * Math.PI * air.soundSpeedMPerS);

/**
 * Reference efficiency of a driver in half space: η0 = ρ/(2πc) (Bl Sd/Mms)²/Re.
 *
 * Acoustic power over V²/Re in the mass-controlled range. Source: R. H. Small 1972 (see `driverFigures`).
 */
export const referenceEfficiency = (
  p: Pick<DriverParameters, 'reOhm' | 'blTm' | 'mmsKg' | 'sdM2'>,
  air: AirProperties,
): number => (efficiencyFactor(air) * (p.blTm * p.sdM2) ** 2) / (p.reOhm * p.mmsKg ** 2);

/** 4π²/c³, s³/m³: η0 = that times fs³ Vas/Qes (Vas in m³; per litre a thousandth of it). The air's density drops out. */
export const efficiencyConstantPerM3 = (soundSpeedMPerS: number): number => (4 * Math.PI ** 2) / soundSpeedMPerS ** 3;

/** The same efficiency from fs (Hz), Vas (m³) and Qes. */
export const efficiencyFromVas = (fsHz: number, vasM3: number, qes: number, soundSpeedMPerS: number): number =>
  (efficiencyConstantPerM3(soundSpeedMPerS) * fsHz ** 3 * vasM3) / qes;

/** Level at 1 m in half space of 1 acoustic watt, dB re 20 µPa: 10 lg(ρc/(2π (20 µPa)²)), about 112.1. */
export const halfSpaceConstantDb = (air: AirProperties): number =>
  10 * Math.log10((air.densityKgPerM3 * air.soundSpeedMPerS) / (2 * Math.PI * REFERENCE_PA ** 2));

/** Level at 1 m for 1 W into Re, dB re 20 µPa, from an efficiency and the constant for 1 acoustic watt. */
export const sensitivityDb = (efficiency: number, constantDb: number): number =>
  constantDb + 10 * Math.log10(efficiency);

/** `sensitivityDb` in half space for the given air. */
export const halfSpaceSensitivityDb = (efficiency: number, air: AirProperties): number =>
  sensitivityDb(efficiency, halfSpaceConstantDb(air));
