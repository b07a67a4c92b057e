import type { EndSlopes } from './minimumPhase.ts';

/** How much of each end is looked at, and the least number of points. */
const FITTED_OCTAVES = 0.5;
const FEWEST_POINTS = 5;

const slopeOf = (x: Float64Array, y: ArrayLike<number>, from: number, to: number): number => {
  const count = to - from;
  let meanX = 0;
  let meanY = 0;
  for (let i = from; i < to; i++) {
    meanX += x[i]! / count;
    meanY += y[i]! / count;
  }
  let above = 0;
  let below = 0;
  for (let i = from; i < to; i++) {
    above += (x[i]! - meanX) * (y[i]! - meanY);
    below += (x[i]! - meanX) ** 2;
  }
  return above / below;
};

/**
 * Slopes d ln|H| / d ln f at both ends of a curve, by least squares over the last half octave (5 points at least, or all).
 *
 * `frequenciesHz` ascending, two points or more.
 * Example: a curve that rises by 12.04 dB to the octave throughout gives 2 and 2.
 */
export function endSlopes(frequenciesHz: ArrayLike<number>, logMagnitudes: ArrayLike<number>): EndSlopes {
  const n = frequenciesHz.length;
  const x = Float64Array.from(frequenciesHz, Math.log);
  const reach = FITTED_OCTAVES * Math.LN2;
  const fewest = Math.min(FEWEST_POINTS, n);
  let low = fewest;
  while (low < n && x[low]! - x[0]! <= reach) low++;
  let high = n - fewest;
  while (high > 0 && x[n - 1]! - x[high - 1]! <= reach) high--;
  return { low: slopeOf(x, logMagnitudes, 0, low), high: slopeOf(x, logMagnitudes, high, n) };
}
