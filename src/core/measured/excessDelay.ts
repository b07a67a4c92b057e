import { findMinimum } from '../math/findMinimum.ts';

const POINTS = 200;
const HIGHEST_HZ = 10_000;
/** Latest and earliest arrival looked for, beyond the flight time and before zero. */
const BEYOND_S = 0.03;
const BEFORE_S = 0.001;

/**
 * Delay in seconds by which a measured phase lags its minimum phase: the one that lines up the excess phase best over the
 * upper decade of the curve (at most 1 to 10 kHz), |Σ w exp(j(φ - φmin + ωτ))| greatest. Works on wrapped phase and does
 * not care for polarity.
 *
 * All lists over the same ascending frequencies; phases in radians. `flightS` is the delay expected from the distance; the
 * search runs from -1 ms to 30 ms beyond twice that. Errs by what the end slopes of the minimum phase err, a few
 * microseconds where the curve ends in its pass band.
 * Source: the matched-delay rule is common practice, no source; checked against made-up delays.
 * Example: a second-order high-pass delayed by 3 ms gives 0.003.
 */
export function excessDelay(
  frequenciesHz: ArrayLike<number>,
  phasesRad: ArrayLike<number>,
  minimumPhasesRad: ArrayLike<number>,
  logMagnitudes: ArrayLike<number>,
  flightS: number,
): number {
  const last = frequenciesHz.length - 1;
  const top = Math.min(HIGHEST_HZ, frequenciesHz[last]!);
  const bottom = Math.max(frequenciesHz[0]!, top / 10);
  const picked: number[] = [];
  for (let k = 0, i = 0; k < POINTS; k++) {
    const wanted = bottom * (top / bottom) ** (k / (POINTS - 1));
    while (i < last && frequenciesHz[i]! < wanted * (1 - 1e-12)) i++;
    if (picked.at(-1) !== i) picked.push(i);
  }
  const loudest = Math.max(...picked.map((i) => logMagnitudes[i]!));
  const points = picked.map((i) => ({
    omega: 2 * Math.PI * frequenciesHz[i]!,
    angle: phasesRad[i]! - minimumPhasesRad[i]!,
    weight: Math.exp(logMagnitudes[i]! - loudest),
  }));
  const misfit = (delayS: number): number => {
    let re = 0;
    let im = 0;
    for (const { omega, angle, weight } of points) {
      re += weight * Math.cos(angle + omega * delayS);
      im += weight * Math.sin(angle + omega * delayS);
    }
    return -(re * re + im * im);
  };
  const step = 1 / (8 * top);
  const end = 2 * flightS + BEYOND_S;
  let best = 0;
  for (let delayS = -BEFORE_S; delayS <= end; delayS += step) if (misfit(delayS) < misfit(best)) best = delayS;
  return findMinimum(misfit, best - step, best + step, 1e-8).x;
}
