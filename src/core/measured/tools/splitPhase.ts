import type { CurveTable } from '../curveTable.ts';
import { excessDelay } from '../excessDelay.ts';
import { groupDelay } from '../groupDelay.ts';
import { type EndSlopes, minimumPhase } from '../minimumPhase.ts';
import { delayPhaseRad } from '../propagationDelay.ts';
import { unwrapPhase } from '../unwrapPhase.ts';

export interface SplitPhase {
  /** Same magnitudes, minimum phase with the stated tails. */
  readonly minimum: CurveTable;
  /** The tails that were assumed, d ln|H|/d ln f. */
  readonly tails: EndSlopes;
  readonly delayS: number;
  /** Measured phase less minimum phase less the delay, unwrapped, radians: flat where the curve is of minimum phase. */
  readonly restRad: Float64Array;
  /** Group delay of that rest, s. */
  readonly restDelayS: Float64Array;
}

/**
 * Divides the phase of a curve into minimum phase, one delay and a rest.
 *
 * `tails` as in `minimumPhase`: what they are wrong by, they bend the rest at the ends; `flightS` the delay expected from the
 * distance. A rest that is not flat says wrong tails, two arrivals or an all-pass. Three points or more (throws otherwise).
 * Example: splitPhase(curve, { low: 2, high: 0 }, 1 / 343).delayS
 */
export function splitPhase(curve: CurveTable, tails: EndSlopes, flightS: number): SplitPhase {
  const { frequenciesHz, magnitudes, phasesRad } = curve;
  const logs = magnitudes.map(Math.log);
  const least = minimumPhase(frequenciesHz, logs, tails);
  const delayS = excessDelay(frequenciesHz, phasesRad, least, logs, flightS);
  const restRad = unwrapPhase(
    phasesRad.map((phase, i) => phase - least[i]! - delayPhaseRad(frequenciesHz[i]!, delayS)),
  );
  return {
    minimum: { frequenciesHz, magnitudes, phasesRad: least },
    tails,
    delayS,
    restRad,
    restDelayS: groupDelay(frequenciesHz, restRad),
  };
}
