import type { CurveTable } from './curveTable.ts';

/**
 * Share of the upper curve at a frequency: a raised cosine one octave wide round `blendHz` on a logarithmic axis.
 *
 * The project's own convention; the shape is the usual one for cross-fades, no source.
 * Example: `blendWeight(1000, 1000)` is 0.5.
 */
export function blendWeight(frequencyHz: number, blendHz: number): number {
  const octaves = Math.min(0.5, Math.max(-0.5, Math.log2(frequencyHz / blendHz)));
  return 0.5 + 0.5 * Math.sin(Math.PI * octaves);
}

/**
 * Joins two curves on the same frequencies at `blendHz`: the lower one rules below, the upper one above, and over the
 * octave between ln magnitude and unwrapped phase go over by `blendWeight`. The upper phase is first shifted by whole
 * turns so that it is nearest to the lower one at `blendHz`.
 *
 * Outside that octave both magnitudes and the lower phase come through unchanged. Magnitudes above 0; throws when the
 * frequencies differ in number.
 * Example: blending a curve with itself gives it back.
 */
export function blendCurves(lower: CurveTable, upper: CurveTable, blendHz: number): CurveTable {
  const { frequenciesHz } = lower;
  const n = frequenciesHz.length;
  if (upper.frequenciesHz.length !== n) throw new RangeError('Two curves are blended on the same frequencies.');
  let nearest = 0;
  for (let i = 1; i < n; i++)
    if (Math.abs(Math.log(frequenciesHz[i]! / blendHz)) < Math.abs(Math.log(frequenciesHz[nearest]! / blendHz)))
      nearest = i;
  const gap = lower.phasesRad[nearest]! - upper.phasesRad[nearest]!;
  const turns = 2 * Math.PI * Math.round(gap / (2 * Math.PI));
  const magnitudes = new Float64Array(n);
  const phasesRad = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const weight = blendWeight(frequenciesHz[i]!, blendHz);
    const [low, high] = [lower.magnitudes[i]!, upper.magnitudes[i]!];
    magnitudes[i] = weight === 0 ? low : weight === 1 ? high : low ** (1 - weight) * high ** weight;
    phasesRad[i] = lower.phasesRad[i]! * (1 - weight) + (upper.phasesRad[i]! + turns) * weight;
  }
  return { frequenciesHz, magnitudes, phasesRad };
}
