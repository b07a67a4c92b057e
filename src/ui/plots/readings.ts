import { readAt } from '../../plot/index.ts';
import type { Picture, PictureCurve } from './picture.ts';

/** What a curve reads at the cursor, as text with its unit. */
export interface Reading {
  readonly id: string;
  readonly name: string;
  readonly text: string;
}

/** Readings of a picture's curves at a frequency, the topmost curve first; curves without a value there are left out. */
export function readings(picture: Picture, hz: number, all = false): readonly Reading[] {
  return picture.curves
    .filter((curve) => all || curve.read)
    .map((curve) => ({ id: curve.id, name: curve.shortName ?? curve.name, text: readingOf(picture, curve, hz) }))
    .filter((reading) => reading.text !== '')
    .reverse();
}

/** One curve's value at a frequency with as many decimals as its axis states, empty where it has none. */
export function readingOf(picture: Picture, curve: PictureCurve, hz: number): string {
  const axis = curve.axis === 'right' ? picture.right : picture.left;
  const value = readAt(curve.frequenciesHz, curve.values, hz, curve.period);
  if (axis === null || value === null) return '';
  const text = value.toFixed(axis.decimals);
  return (Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−')) + axis.unit;
}
