import { scaleLinear } from 'd3-scale';

/** A linear axis of any quantity, decibels included: values to pixels and back. */
export interface ValueScale {
  readonly domain: readonly [number, number];
  readonly rangePx: readonly [number, number];
  toPx(value: number): number;
  toValue(px: number): number;
}

/**
 * Makes a linear axis. A vertical one gives its range from the bottom up: `[heightPx, 0]`.
 * Example: `valueScale([50, 100], [300, 0]).toPx(75)` is 150.
 */
export function valueScale(domain: readonly [number, number], rangePx: readonly [number, number]): ValueScale {
  if (!(domain[1] > domain[0])) throw new RangeError('An axis needs low < high.');
  const scale = scaleLinear([...domain], [...rangePx]);
  return { domain, rangePx, toPx: (value) => scale(value), toValue: (px) => scale.invert(px) };
}
