import type { PublishedPoint } from '../../../core/design/alignmentMap/index.ts';
import { type Box, boxesOverlap } from '../../../plot/index.ts';
import type { MapScales } from './mapScales.ts';

/** Published boxes that lie so close together that they share a mark. */
export interface MapMark {
  readonly x: number;
  readonly y: number;
  readonly label: string;
  readonly points: readonly PublishedPoint[];
  readonly sealed: boolean;
  /** Middle of the label. */
  readonly labelX: number;
  readonly labelY: number;
}

const TOGETHER_PX = 16;
const CHARACTER_PX = 7;
const MARK_TEXT_PX = 14;
/** Half a diamond with some air. */
const SIGN_PX = 7;

/** Where the published boxes stand: vented ones in the plane, sealed ones on its lower edge; what lies outside is left to the table. */
export function placeMarks(points: readonly PublishedPoint[], { area, volume, tuning }: MapScales): readonly MapMark[] {
  const groups: { x: number; y: number; sealed: boolean; points: PublishedPoint[] }[] = [];
  for (const point of points) {
    const x = volume.toPx(point.volumeM3);
    const sealed = point.tuningHz === null;
    const y = point.tuningHz === null ? area.bottom : tuning.toPx(point.tuningHz);
    if (!(x >= area.left && x <= area.right && y >= area.top && y <= area.bottom)) continue;
    const near = groups.find((group) => group.sealed === sealed && Math.hypot(group.x - x, group.y - y) < TOGETHER_PX);
    if (near) near.points.push(point);
    else groups.push({ x, y, sealed, points: [point] });
  }
  const signs = groups.map(({ x, y }) => around(x, y, 2 * SIGN_PX, 2 * SIGN_PX));
  const labels: Box[] = [];
  return groups.map((group, own) => {
    const label = group.points.map(shortName).join(', ');
    const half = widthOf(label) / 2;
    const aside = half + SIGN_PX + 4;
    const within = (x: number): number => Math.min(Math.max(x, area.left + half), area.right - half);
    const places = [
      [within(group.x), group.y - MARK_TEXT_PX],
      [within(group.x), group.y + MARK_TEXT_PX + 2],
      [group.x + aside, group.y],
      [group.x - aside, group.y],
      [within(group.x), group.y - 2 * MARK_TEXT_PX],
      [within(group.x), group.y - 3 * MARK_TEXT_PX],
    ] as const;
    const isFree = ([x, y]: readonly [number, number]): boolean => {
      const box = around(x, y, 2 * half, MARK_TEXT_PX);
      const isInside =
        box.left >= area.left && box.right <= area.right && box.top >= area.top && box.bottom <= area.bottom;
      const others = [...labels, ...signs.filter((_, other) => other !== own)];
      return isInside && others.every((other) => !boxesOverlap(other, box));
    };
    const [labelX, labelY] = places.find(isFree) ?? places[0];
    labels.push(around(labelX, labelY, 2 * half, MARK_TEXT_PX));
    return { ...group, label, labelX, labelY };
  });
}

const around = (x: number, y: number, width: number, height: number): Box => ({
  left: x - width / 2,
  right: x + width / 2,
  top: y - height / 2,
  bottom: y + height / 2,
});

export const shortName = ({ family, qtc }: PublishedPoint): string =>
  family === 'Qtc' ? `Qtc ${(qtc ?? 0).toFixed(2)}` : family;
const widthOf = (text: string): number => text.length * CHARACTER_PX + 4;
/** The rectangles that marks and their labels take, for what is written after them. */
export const markBoxes = (marks: readonly MapMark[]): Box[] =>
  marks.flatMap(({ x, y, label, labelX, labelY }) => [
    around(x, y, 2 * SIGN_PX, 2 * SIGN_PX),
    around(labelX, labelY, widthOf(label), MARK_TEXT_PX),
  ]);
