import { bandIndices } from '../band.ts';
import type { FirstOrderSpread } from './firstOrderSpread.ts';
import type { PartTolerance } from './toleranceSpec.ts';

/** What one part's tolerance has to do with the spread of a curve within a band. */
export interface TolerancePart {
  readonly partId: string;
  /** Of the variance over the band, 0 to 1; all parts together 1. */
  readonly share: number;
  /** Root mean square over the band of the standard deviation that is left when this part is exact, dB. */
  readonly leftDb: number;
}

/**
 * Which part is worth buying tighter: parts by their share in the variance of the level, greatest first. By the adjoint.
 * @example tighterParts(spread, spec.parts, frequenciesHz, { fromHz: 200, toHz: 10000 })[0].partId
 */
export function tighterParts(
  { byPartDb }: FirstOrderSpread,
  parts: readonly PartTolerance[],
  frequenciesHz: Float64Array,
  band: { readonly fromHz: number; readonly toHz: number },
): TolerancePart[] {
  const { from, to } = bandIndices(frequenciesHz, band.fromHz, band.toHz);
  const sums = byPartDb.map((deviation) => {
    let sum = 0;
    for (let f = from; f < to; f++) sum += deviation[f]! ** 2;
    return sum;
  });
  const whole = sums.reduce((a, b) => a + b, 0);
  return parts
    .map(({ partId }, i) => ({
      partId,
      share: whole > 0 ? sums[i]! / whole : 0,
      leftDb: to > from ? Math.sqrt(Math.max(0, whole - sums[i]!) / (to - from)) : 0,
    }))
    .sort((a, b) => b.share - a.share);
}
