/**
 * Share of the measured table at a frequency: a raised cosine one octave wide on a logarithmic axis, 0 below
 * blendHz/√2, one half at blendHz, 1 above blendHz·√2.
 * Source: the project's own convention; the shape is the usual Hann fade, from memory.
 * @example blendWeight(1000, 1000) // 0.5
 */
export function blendWeight(frequencyHz: number, blendHz: number): number {
  const octaves = Math.log2(frequencyHz / blendHz);
  if (octaves <= -0.5) return 0;
  if (octaves >= 0.5) return 1;
  return 0.5 + 0.5 * Math.sin(Math.PI * octaves);
}
