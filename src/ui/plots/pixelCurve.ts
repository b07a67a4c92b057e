import type { FrequencyScale, ValueScale } from '../../plot/index.ts';
import type { PictureCurve } from './picture.ts';

const columns = new WeakMap<object, { readonly key: string; readonly xsPx: Float64Array }>();

/**
 * A curve in pixels. The x of a frequency list are kept for as long as the list and the axis stay, since they are the same
 * for all curves of a sweep. Of a wrapped angle the points before a jump become gaps.
 */
export function pixelCurve(
  curve: PictureCurve,
  x: FrequencyScale,
  y: ValueScale,
): { readonly xsPx: Float64Array; readonly ysPx: Float64Array } {
  const { frequenciesHz, values, period } = curve;
  const key = `${x.rangePx}`;
  let known = columns.get(frequenciesHz);
  if (known?.key !== key) {
    known = { key, xsPx: Float64Array.from(frequenciesHz, (hz) => x.toPx(hz)) };
    columns.set(frequenciesHz, known);
  }
  const zeroPx = y.toPx(0);
  const perUnit = y.toPx(1) - zeroPx;
  const ysPx = new Float64Array(values.length);
  for (let index = 0; index < values.length; index++) {
    const value = values[index] ?? Number.NaN;
    const next = values[index + 1] ?? value;
    const jumps = period !== undefined && Math.abs(next - value) > period / 2;
    ysPx[index] = jumps ? Number.NaN : zeroPx + value * perUnit;
  }
  return { xsPx: known.xsPx, ysPx };
}
