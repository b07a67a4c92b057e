/**
 * Frequencies evenly spaced on a logarithmic axis, both ends included, Hz.
 * @example sweepGrid(10, 20000, 1000)
 */
export function sweepGrid(fromHz: number, toHz: number, count: number): Float64Array {
  const out = new Float64Array(count);
  const step = Math.log(toHz / fromHz) / (count - 1);
  for (let i = 0; i < count; i++) out[i] = fromHz * Math.exp(step * i);
  out[count - 1] = toHz;
  return out;
}

/** What the screen computes at: from half the lowest plotted frequency, since cones and ports move most down there. */
export const SCREEN_FROM_HZ = 10;
export const SCREEN_TO_HZ = 20000;
export const SCREEN_COUNT = 1000;
