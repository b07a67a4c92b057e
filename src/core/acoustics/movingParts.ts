import type { Admittance } from './admittance.ts';
import { seriesResonator } from './seriesResonator.ts';

/** Cone, dome or passive radiator as a mechanical resonator: mass with its air load, compliance, resistance, effective area. */
export interface MovingParts {
  readonly mmsKg: number;
  readonly cmsMPerN: number;
  readonly rmsKgPerS: number;
  readonly sdM2: number;
}

/**
 * Moving parts referred to the acoustical side: Y = Sd²/(Rms + jωMms + 1/(jωCms)), m³/(s·Pa).
 *
 * Holds while the cone moves as one piece. A driver hangs this branch between the air in front and the air behind it, beside its
 * gyrator of ratio Bl/Sd. Source: L. L. Beranek, Acoustics, 1954, chapter 3 (mechano-acoustical transformation; from memory).
 *
 * Example: at resonance the admittance is the real number Sd²/Rms.
 */
export const movingPartsAdmittance = (parts: MovingParts): Admittance => {
  const square = parts.sdM2 * parts.sdM2;
  return seriesResonator({
    resistance: parts.rmsKgPerS / square,
    mass: parts.mmsKg / square,
    compliance: parts.cmsMPerN * square,
  });
};

/**
 * A passive radiator between chamber air and the air outside: the same resonator without a gyrator.
 *
 * Source: R. H. Small, "Passive-Radiator Loudspeaker Systems", J. Audio Eng. Soc. 22, 1974, part I (from memory).
 */
export const passiveRadiatorAdmittance = (parts: MovingParts): Admittance => movingPartsAdmittance(parts);
