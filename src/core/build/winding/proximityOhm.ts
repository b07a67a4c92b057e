import { ringField } from '../coils/ringField.ts';
import { skinDepthM } from './skinResistance.ts';
import type { Turn } from './turns.ts';

/** Resistance that eddy currents add. */
export interface EddyResistance {
  readonly ohm: number;
  /** Set where the wire is thicker than two skin depths: the true value is lower. */
  readonly isUpperBound: boolean;
}

/**
 * Flux density at every turn from all the others, T² per A², summed with each turn's circumference (m): Σ 2π r |B|². Depends on the shape
 * alone, so a sweep needs it once; time goes with the square of the turns.
 * @example squaredFieldSum(layTurns(winding))
 */
export function squaredFieldSum(turns: readonly Turn[]): number {
  let sum = 0;
  for (const here of turns) {
    let radial = 0;
    let axial = 0;
    for (const other of turns) {
      if (other === here) continue;
      const field = ringField(other.radiusM, here.radiusM, here.alongM - other.alongM);
      radial += field.radialTPerA;
      axial += field.axialTPerA;
    }
    sum += 2 * Math.PI * here.radiusM * (radial * radial + axial * axial);
  }
  return sum;
}

/**
 * Series resistance that eddy currents in the turns add at a frequency, from the field of all the other turns, ohm: π d⁴ ω² Σ(2π r |B|²)/(64 ρ).
 *
 * Rises as f² while the wire (bare diameter, m) is thinner than two skin depths; beyond that an upper bound, and said so. Field of
 * circular filaments, square layers. Source: eddy loss of a round wire in a field across it, derived.
 * @example proximityOhm(squaredFieldSum(turns), 1e-3, 1.724e-8, 3000).ohm
 */
export function proximityOhm(fieldSum: number, wireM: number, resistivityOhmM: number, hz: number): EddyResistance {
  const omega = 2 * Math.PI * hz;
  return {
    ohm: (Math.PI * wireM ** 4 * omega ** 2 * fieldSum) / (64 * resistivityOhmM),
    isUpperBound: wireM > 2 * skinDepthM(resistivityOhmM, hz),
  };
}
