import { greatestRatedImpedanceOhm, leastAllowedOhm, mayBeRated } from '../../units/ratedImpedance.ts';
import type { Complexes } from '../nodeSolution.ts';

/** The least modulus in the rated band and what it allows. */
export interface RatedImpedanceCheck {
  readonly leastOhm: number;
  readonly atHz: number;
  /** 80 % of the rated impedance, ohm. */
  readonly allowedOhm: number;
  readonly greatestRatedOhm: number;
  readonly passes: boolean;
}

/**
 * Does an impedance keep to its rating: its least modulus between the band's ends at least 80 % of the rated impedance.
 *
 * `impedance` in ohm at `frequenciesHz` (ascending); the least of the points given, so their spacing is the accuracy. Returns null
 * where no point lies in the band. Source: IEC 60268-5, rated impedance (as trade dictionaries quote it).
 * @example ratedImpedanceCheck(impedance, frequenciesHz, 8, [20, 20000])?.passes
 */
export function ratedImpedanceCheck(
  { re, im }: Complexes,
  frequenciesHz: Float64Array,
  ratedOhm: number,
  [lowHz, highHz]: readonly [number, number],
): RatedImpedanceCheck | null {
  let leastOhm = Number.POSITIVE_INFINITY;
  let atHz = 0;
  frequenciesHz.forEach((hz, f) => {
    const ohm = Math.hypot(re[f]!, im[f]!);
    if (hz < lowHz || hz > highHz || ohm >= leastOhm) return;
    leastOhm = ohm;
    atHz = hz;
  });
  if (leastOhm === Number.POSITIVE_INFINITY) return null;
  return {
    leastOhm,
    atHz,
    allowedOhm: leastAllowedOhm(ratedOhm),
    greatestRatedOhm: greatestRatedImpedanceOhm(leastOhm),
    passes: mayBeRated(leastOhm, ratedOhm),
  };
}
