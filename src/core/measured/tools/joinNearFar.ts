import { findMinimum } from '../../math/findMinimum.ts';
import { blendCurves } from '../blendCurves.ts';
import type { CurveTable } from '../curveTable.ts';
import { logGrid } from '../logGrid.ts';
import { delayPhaseRad } from '../propagationDelay.ts';
import { resampleCurve } from '../resampleCurve.ts';

export interface Joined {
  readonly curve: CurveTable;
  /** What the near curve was multiplied by, dB, and delayed by, s, to meet the far one. */
  readonly gainDb: number;
  readonly delayS: number;
  /** Set where the near curve had to be turned over. */
  readonly reversed: boolean;
  /** What is left in the octave of the fit: root mean square of |g·near/far − 1|. */
  readonly misfit: number;
  readonly fitHz: readonly [number, number];
}

export interface JoinOptions {
  /** Where the near curve hands over; the fit takes the octave round it. */
  readonly blendHz: number;
  /** Points to the octave of the result. */
  readonly perOctave: number;
  /** Delays looked for, s. */
  readonly delayS: readonly [number, number];
}

/**
 * Joins a near-field curve (below) to a far-field one (above): level and delay of the near one fitted in the octave round `blendHz`,
 * then a cross-fade of ln magnitude and phase over that octave.
 *
 * Complex least squares of g exp(−jωτ)·near against far, weighted by 1/|far|, g real; τ by search, g in closed form. Both curves must
 * cover the octave (throws a RangeError); blend above the gate's limit and below the near field's. The near curve carries its baffle step.
 * Source: the fit of a real gain and a delay is common practice, no source.
 *
 * Example: joinNearFar(near, far, { blendHz: 300, perOctave: 48, delayS: [0, 0.01] })
 */
export function joinNearFar(
  near: CurveTable,
  far: CurveTable,
  { blendHz, perOctave, delayS: [from, to] }: JoinOptions,
): Joined {
  const fitHz = [blendHz / Math.SQRT2, blendHz * Math.SQRT2] as const;
  for (const { frequenciesHz } of [near, far])
    if (!(frequenciesHz[0]! <= fitHz[0] && frequenciesHz.at(-1)! >= fitHz[1]))
      throw new RangeError('Both curves cover the octave in which they are joined.');
  const band = logGrid(fitHz[0], fitHz[1], Math.max(perOctave, 48));
  const [a, b] = [resampleCurve(near, band), resampleCurve(far, band)];
  // Ratio near/far at the band's points: g is the real part of its mean, turned by the delay.
  const ratios = [...band].map((_, i) => ({
    size: a.magnitudes[i]! / b.magnitudes[i]!,
    angle: a.phasesRad[i]! - b.phasesRad[i]!,
  }));
  const power = ratios.reduce((sum, { size }) => sum + size * size, 0);
  const projected = (delayS: number): number =>
    ratios.reduce((sum, { size, angle }, i) => sum + size * Math.cos(angle + delayPhaseRad(band[i]!, delayS)), 0);
  const cost = (delayS: number): number => -(projected(delayS) ** 2);
  const step = 1 / (16 * fitHz[1]);
  let best = from;
  for (let delayS = from; delayS <= to; delayS += step) if (cost(delayS) < cost(best)) best = delayS;
  const delayS = findMinimum(cost, best - step, best + step, 1e-8).x;
  const gain = projected(delayS) / power;
  const misfit = Math.sqrt(Math.max(0, 1 - projected(delayS) ** 2 / (power * band.length)));
  const grid = logGrid(near.frequenciesHz[0]!, far.frequenciesHz.at(-1)!, perOctave);
  const low = resampleCurve(near, grid);
  const moved: CurveTable = {
    frequenciesHz: grid,
    magnitudes: low.magnitudes.map((magnitude) => magnitude * Math.abs(gain)),
    phasesRad: low.phasesRad.map((phase, i) => phase + delayPhaseRad(grid[i]!, delayS) + (gain < 0 ? Math.PI : 0)),
  };
  return {
    curve: blendCurves(moved, resampleCurve(far, grid), blendHz),
    gainDb: 20 * Math.log10(Math.abs(gain)),
    delayS,
    reversed: gain < 0,
    misfit,
    fitHz,
  };
}
