import { findMinimum } from '../../math/findMinimum.ts';
import type { CurveTable } from '../curveTable.ts';
import { logGrid } from '../logGrid.ts';
import { resampleCurve } from '../resampleCurve.ts';

export interface PhaseMatch {
  /** Left later than right, s. */
  readonly delayS: number;
  readonly polarity: 'same' | 'reversed';
  /** How well delay and polarity explain the difference of phase, 0 to 1. */
  readonly coherence: number;
}

const PER_OCTAVE = 24;

/**
 * Delay and polarity between two channels from their phases over a band: the delay that lines up the phase difference best, then its
 * sign. Null where the curves do not cover the band.
 *
 * Delays up to ±`mostS`. A coherence below about 0.8 says that the phases differ otherwise too.
 * Example: a channel against itself, reversed and 1 ms later, gives 1 ms, reversed, 1.
 */
export function channelPolarity(
  left: CurveTable,
  right: CurveTable,
  [fromHz, toHz]: readonly [number, number],
  mostS = 0.005,
): PhaseMatch | null {
  const covers = ({ frequenciesHz }: CurveTable): boolean =>
    frequenciesHz[0]! <= fromHz && frequenciesHz.at(-1)! >= toHz;
  if (!covers(left) || !covers(right)) return null;
  const grid = logGrid(fromHz, toHz, PER_OCTAVE);
  const [a, b] = [resampleCurve(left, grid).phasesRad, resampleCurve(right, grid).phasesRad];
  const sums = (delayS: number): { re: number; im: number } => {
    let [re, im] = [0, 0];
    grid.forEach((hz, i) => {
      const angle = a[i]! - b[i]! + 2 * Math.PI * hz * delayS;
      re += Math.cos(angle) / grid.length;
      im += Math.sin(angle) / grid.length;
    });
    return { re, im };
  };
  // The phase at 0 Hz may be 0 or a half turn, nothing between: the real part alone counts.
  const misfit = (delayS: number): number => -Math.abs(sums(delayS).re);
  const step = 1 / (8 * toHz);
  let best = 0;
  for (let delayS = -mostS; delayS <= mostS; delayS += step) if (misfit(delayS) < misfit(best)) best = delayS;
  const delayS = findMinimum(misfit, best - step, best + step, 1e-8).x;
  const { re } = sums(delayS);
  return { delayS, polarity: re < 0 ? 'reversed' : 'same', coherence: Math.abs(re) };
}
