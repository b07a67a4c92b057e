import type { AirProperties } from '../airProperties.ts';
import { absorptionResistancePaSPerM3, chamberComplianceM3PerPa, leakResistancePaSPerM3 } from '../chamber.ts';
import { portLossResistancePaSPerM3 } from '../port/portAdmittance.ts';

/** Q of several losses at one frequency together, 1/Σ(1/Q): null stands for a loss that is not there. Infinity without any. */
export const totalLossQ = (qs: readonly (number | null)[]): number =>
  1 / qs.reduce<number>((sum, q) => (q === null ? sum : sum + 1 / q), 0);

/** The three losses of a vented box as elements, from their quality factors at its tuning. */
export interface BoxLosses {
  readonly complianceM3PerPa: number;
  /** Mass that tunes the compliance, 1/(ω²C), kg/m⁴. */
  readonly portMassKgPerM4: number;
  /** Leak across the compliance, absorption in series with it, port loss in series with the mass, Pa·s/m³; null: none. */
  readonly leakPaSPerM3: number | null;
  readonly absorptionPaSPerM3: number | null;
  readonly portPaSPerM3: number | null;
  readonly totalQ: number;
}

/**
 * Loss resistances of a vented box: R_AL = QL/(ωB C), R_AA = 1/(ωB C QA), R_AP = 1/(ωB C QP) = ωB M/QP; 1/QB = Σ 1/Q.
 *
 * Volume apparent, m³. Measured boxes of 25 to 100 L most often have QB 5 to 10, falling with volume; QL = 7 is a fair start.
 * Source: R. H. Small, "Vented-Box Loudspeaker Systems", J. Audio Eng. Soc. 21, 1973, parts I and III (from memory, checked by circuit).
 *
 * Example: 40 L at 38 Hz, QL 7: a leak of 104 kPa·s/m³.
 */
export const boxLosses = (
  box: {
    readonly volumeM3: number;
    readonly tuningHz: number;
    readonly ql: number | null;
    readonly qa: number | null;
    readonly qp: number | null;
  },
  air: AirProperties,
): BoxLosses => {
  const { volumeM3, tuningHz: atHz, ql, qa, qp } = box;
  const complianceM3PerPa = chamberComplianceM3PerPa(volumeM3, air);
  return {
    complianceM3PerPa,
    portMassKgPerM4: 1 / ((2 * Math.PI * atHz) ** 2 * complianceM3PerPa),
    leakPaSPerM3: ql === null ? null : leakResistancePaSPerM3({ q: ql, atHz }, complianceM3PerPa),
    absorptionPaSPerM3: qa === null ? null : absorptionResistancePaSPerM3({ q: qa, atHz }, complianceM3PerPa),
    portPaSPerM3: qp === null ? null : portLossResistancePaSPerM3({ q: qp, atHz }, complianceM3PerPa),
    totalQ: totalLossQ([ql, qa, qp]),
  };
};
