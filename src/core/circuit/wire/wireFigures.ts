import { type Conductor, resistivityAtOhmM } from './conductor.ts';

/** A round wire's figures; resistance to direct current. */
export interface WireFigures {
  readonly areaM2: number;
  readonly ohmPerM: number;
  readonly kgPerM: number;
}

/**
 * Cross-section, resistance per metre at a temperature in °C and mass per metre of a round wire of bare diameter in m (above 0).
 *
 * Insulation is not weighed. Source: R' = ρ/A, with the conductor's standard.
 * @example wireFigures(1e-3, COPPER, 20).ohmPerM // 0.02195
 */
export function wireFigures(diameterM: number, conductor: Conductor, temperatureC: number): WireFigures {
  const areaM2 = (Math.PI * diameterM ** 2) / 4;
  return {
    areaM2,
    ohmPerM: resistivityAtOhmM(conductor, temperatureC) / areaM2,
    kgPerM: conductor.densityKgPerM3 * areaM2,
  };
}
