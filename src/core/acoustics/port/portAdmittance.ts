import type { Admittance } from '../admittance.ts';
import type { AirProperties } from '../airProperties.ts';
import { chamberComplianceM3PerPa } from '../chamber.ts';
import { seriesResonator } from '../seriesResonator.ts';
import type { StatedLoss } from '../statedLoss.ts';

/** Acoustic mass of the air in a port, M = ρL/S, kg/m⁴ (length with end corrections). */
export const portMassKgPerM4 = (areaM2: number, effectiveLengthM: number, air: AirProperties): number =>
  (air.densityKgPerM3 * effectiveLengthM) / areaM2;

/**
 * Port loss as a resistance in series with the mass: R = 1/(ω0 Cab QP), Pa·s/m³, which is ω0 M/QP when the port tunes the chamber
 * to ω0. Source: R. H. Small, "Vented-Box Loudspeaker Systems", J. Audio Eng. Soc. 21, 1973, part I (from memory).
 */
export const portLossResistancePaSPerM3 = (loss: StatedLoss, complianceM3PerPa: number): number =>
  1 / (2 * Math.PI * loss.atHz * complianceM3PerPa * loss.q);

/**
 * Port between its chamber's node and the air outside: mass ρL/S with its loss in series, m³/(s·Pa).
 *
 * `areaM2` is the total of equal ports side by side. `chamberVolumeM3` (apparent) turns the stated QP into a resistance.
 * Holds well below the port's own pipe resonances, about c/(2L). Its flow counts as positive from the chamber outwards.
 */
export const portAdmittance = (
  port: {
    readonly areaM2: number;
    readonly effectiveLengthM: number;
    readonly loss: StatedLoss | null;
    /** Resistance of a filling in the bore, in series too. */
    readonly stuffingPaSPerM3?: number;
  },
  chamberVolumeM3: number,
  air: AirProperties,
): Admittance =>
  seriesResonator({
    resistance:
      (port.loss ? portLossResistancePaSPerM3(port.loss, chamberComplianceM3PerPa(chamberVolumeM3, air)) : 0) +
      (port.stuffingPaSPerM3 ?? 0),
    mass: portMassKgPerM4(port.areaM2, port.effectiveLengthM, air),
    compliance: Number.POSITIVE_INFINITY,
  });
