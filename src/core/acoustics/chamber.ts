import type { Admittance } from './admittance.ts';
import type { AirProperties } from './airProperties.ts';
import { seriesResonator } from './seriesResonator.ts';
import type { StatedLoss } from './statedLoss.ts';

/**
 * Acoustic compliance of the air in a chamber, Cab = V/(ρc²), m³/Pa (volume: apparent, m³).
 *
 * Holds while the chamber is small against the wavelength (largest inner length below about λ/10).
 * Source: L. L. Beranek, Acoustics, 1954, section 5.4 (from memory).
 */
export const chamberComplianceM3PerPa = (volumeM3: number, air: AirProperties): number =>
  volumeM3 / (air.densityKgPerM3 * air.soundSpeedMPerS ** 2);

/**
 * Absorption as a resistance in series with the compliance: R = 1/(ω0 Cab QA), Pa·s/m³, ω0 where QA was stated.
 *
 * Source: R. H. Small, "Vented-Box Loudspeaker Systems", J. Audio Eng. Soc. 21, 1973, part I (from memory, checked by circuit).
 */
export const absorptionResistancePaSPerM3 = (loss: StatedLoss, complianceM3PerPa: number): number =>
  1 / (2 * Math.PI * loss.atHz * complianceM3PerPa * loss.q);

/**
 * Leak as a resistance across the compliance: R = QL/(ω0 Cab), Pa·s/m³, ω0 where QL was stated. It stays when the tuning moves.
 *
 * Source: as `absorptionResistancePaSPerM3`.
 */
export const leakResistancePaSPerM3 = (loss: StatedLoss, complianceM3PerPa: number): number =>
  loss.q / (2 * Math.PI * loss.atHz * complianceM3PerPa);

/**
 * Chamber air between its node and still air: compliance with absorption in series, m³/(s·Pa). The leak is a branch of its own.
 *
 * Example: without absorption the admittance is jωV/(ρc²).
 */
export const chamberAdmittance = (
  chamber: { readonly volumeM3: number; readonly absorption: StatedLoss | null },
  air: AirProperties,
): Admittance => {
  const compliance = chamberComplianceM3PerPa(chamber.volumeM3, air);
  const resistance = chamber.absorption ? absorptionResistancePaSPerM3(chamber.absorption, compliance) : 0;
  return seriesResonator({ resistance, mass: 0, compliance });
};

/** The leak of a chamber as a constant conductance, m³/(s·Pa). */
export const leakAdmittance = (
  chamber: { readonly volumeM3: number; readonly leak: StatedLoss },
  air: AirProperties,
): Admittance => {
  const compliance = chamberComplianceM3PerPa(chamber.volumeM3, air);
  const conductance = 1 / leakResistancePaSPerM3(chamber.leak, compliance);
  return (_omegas, outRe, outIm) => {
    outRe.fill(conductance);
    outIm.fill(0);
  };
};
