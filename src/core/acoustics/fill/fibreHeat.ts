import { AIR_HEAT_J_PER_KG_K, type ViscousAir } from '../viscousAir.ts';
import type { FibreFill } from './fibreFill.ts';

/** What fibres of finite heat capacity leave of the volume gain. */
export interface FibreHeat {
  readonly solidFraction: number;
  /** Heat capacity of the air at constant pressure over that of the fibres in the same space. */
  readonly airOverFibre: number;
  /** γ at low frequencies: 1 for boundless fibres, γ without any. */
  readonly effectiveRatio: number;
  /** Apparent over geometric volume at low frequencies, the fibres' own volume taken off. */
  readonly volumeFactor: number;
}

/**
 * Low-frequency volume factor of a fill, (1 − s) γ/γeff, γeff = (γHv + Hf)/(Hv + Hf), Hv = (1 − s)ρcp/γ, Hf = m cf.
 *
 * The same as (1 − s)[1 + (γ − 1)/(1 + γHv/Hf)]. The ceiling for any fill: 8 to 16 kg/m³ of common fibre give 1.35. What is
 * reached depends on the thermal corner too (`fillVolumeFactor`). Source: filled-box volume formula of the textbooks (L. L. Beranek,
 * Acoustics, 1954, chapter 8; from memory), derived anew.
 *
 * Example: polyester, 10 kg/m³: 1.353
 */
export const fibreHeat = (
  fill: Pick<FibreFill, 'bulkDensityKgPerM3' | 'solidDensityKgPerM3' | 'solidHeatJPerKgK'>,
  air: ViscousAir,
  airHeatJPerKgK: number = AIR_HEAT_J_PER_KG_K,
): FibreHeat => {
  const solid = fill.bulkDensityKgPerM3 / fill.solidDensityKgPerM3;
  const gamma = air.heatCapacityRatio;
  const airOverFibre =
    ((1 - solid) * air.densityKgPerM3 * airHeatJPerKgK) / (fill.bulkDensityKgPerM3 * fill.solidHeatJPerKgK);
  const effectiveRatio = (1 + airOverFibre) / (1 + airOverFibre / gamma);
  return {
    solidFraction: solid,
    airOverFibre,
    effectiveRatio,
    volumeFactor: ((1 - solid) * gamma) / effectiveRatio,
  };
};
