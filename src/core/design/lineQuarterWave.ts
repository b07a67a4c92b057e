import { FLANGED_END_RADII } from '../acoustics/port/openEndFactors.ts';
import type { Line } from '../document/schema.ts';

/** What the air before an open end adds to a line, m: that of a flush round mouth of the same area. */
export const lineEndCorrectionM = (endAreaM2: number): number => FLANGED_END_RADII * Math.sqrt(endAreaM2 / Math.PI);

/**
 * Frequency at which a line is a quarter of a wave long, Hz: c/(4 L), an open end counted with its end correction; null where it ends in
 * another chamber, whose air decides.
 *
 * For an empty line of even section: a taper shifts it (narrower towards the end: lower), and filling slows the sound by a tenth to a third
 * (common practice, no source). Source: pipe closed at one end, textbook.
 *
 * Example: 2 m, 150 cm², open: 41.7 Hz
 */
export function lineQuarterWaveHz(
  line: Pick<Line, 'lengthM' | 'endAreaM2' | 'end'>,
  soundSpeedMPerS: number,
): number | null {
  if (line.end.kind === 'chamber') return null;
  const endM = line.end.kind === 'open' ? lineEndCorrectionM(line.endAreaM2) : 0;
  return soundSpeedMPerS / (4 * (line.lengthM + endM));
}
