import { clearWidthM } from '../../../../../core/document/insideSpace.ts';
import type { Enclosure, Line } from '../../../../../core/document/schema.ts';

/** Size of a line's mouth as drawn: a square of its area, or right across where that is wider than the inside; the document has no shape for it. */
export function lineMouth(line: Line, enclosure: Enclosure): { readonly widthM: number; readonly heightM: number } {
  const side = Math.sqrt(line.endAreaM2);
  const widthM = Math.min(side, Math.max(0.01, clearWidthM(enclosure, 0)));
  return { widthM, heightM: line.endAreaM2 / widthM };
}
