import type { AirProperties } from './airProperties.ts';
import { chamberComplianceM3PerPa } from './chamber.ts';
import type { MovingParts } from './movingParts.ts';

/**
 * Frequency at which a passive radiator's mass resonates with the chamber's air and its own suspension, Hz:
 * fP = (1/2π) √((Sd²/Cab + 1/Cms)/M), where the cone stands almost still. M with what is added; losses left out.
 *
 * Source: R. H. Small, "Passive-Radiator Loudspeaker Systems", J. Audio Eng. Soc. 22, 1974, part I (from memory).
 */
export const radiatorTuningHz = (
  { sdM2, mmsKg, cmsMPerN }: Omit<MovingParts, 'rmsKgPerS'>,
  apparentVolumeM3: number,
  air: AirProperties,
): number =>
  Math.sqrt((sdM2 ** 2 / chamberComplianceM3PerPa(apparentVolumeM3, air) + 1 / cmsMPerN) / mmsKg) / (2 * Math.PI);

/** Frequency of the notch in the sum: the radiator's own resonance in free air, Hz, (1/2π) √(1/(Cms M)). Source: as `radiatorTuningHz`. */
export const radiatorNotchHz = ({ mmsKg, cmsMPerN }: Pick<MovingParts, 'mmsKg' | 'cmsMPerN'>): number =>
  1 / (2 * Math.PI * Math.sqrt(cmsMPerN * mmsKg));
