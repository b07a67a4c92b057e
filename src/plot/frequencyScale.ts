import { scaleLog } from 'd3-scale';

/** A logarithmic frequency axis: hertz to pixels and back. */
export interface FrequencyScale {
  readonly domainHz: readonly [number, number];
  readonly rangePx: readonly [number, number];
  toPx(hz: number): number;
  toHz(px: number): number;
}

/**
 * Makes a logarithmic frequency axis. Values outside the domain are extrapolated, not clamped.
 * Throws a RangeError when the domain is not 0 < low < high, which is a bug of the caller.
 * Example: `frequencyScale([20, 20000], [0, 900]).toPx(632.5)` is about 450.
 */
export function frequencyScale(
  domainHz: readonly [number, number],
  rangePx: readonly [number, number],
): FrequencyScale {
  if (!(domainHz[0] > 0 && domainHz[1] > domainHz[0])) {
    throw new RangeError('A frequency axis needs 0 < low < high.');
  }
  const scale = scaleLog([...domainHz], [...rangePx]);
  return { domainHz, rangePx, toPx: (hz) => scale(hz), toHz: (px) => scale.invert(px) };
}
