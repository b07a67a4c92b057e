import {
  type Box,
  type FrequencyScale,
  type FrequencyTick,
  frequencyScale,
  frequencyTicks,
  type ValueScale,
  type ValueTick,
  valueScale,
  valueTicks,
} from '../../plot/index.ts';
import type { Picture, PictureAxis } from './picture.ts';

export const DOMAIN_HZ = [20, 20000] as const;

export type AxisRange = readonly [number, number];

/** The frame of a plot: all that changes seldom. Curves, label places and readings change at every edit and are not here. */
export interface PlotStructure {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly area: Box;
  readonly x: FrequencyScale;
  readonly left: ValueScale;
  readonly right: ValueScale | null;
  readonly xTicks: readonly FrequencyTick[];
  readonly leftTicks: readonly ValueTick[];
  readonly rightTicks: readonly ValueTick[];
  readonly leftTitle: string;
  readonly rightTitle: string | null;
  readonly curves: readonly {
    readonly id: string;
    readonly name: string;
    readonly shortName: string;
    readonly colour: string;
    readonly read: boolean;
  }[];
  readonly lines: readonly { readonly id: string; readonly label: string; readonly colour: string }[];
  /** Two structures with the same signature look the same. */
  readonly signature: string;
}

/** Lays out the frame of a plot for a picture: scales and ticks from its size and the ranges that its axes show. */
export function plotStructure(
  picture: Picture,
  ranges: { readonly left: AxisRange; readonly right: AxisRange | null },
  size: { readonly widthPx: number; readonly heightPx: number; readonly remPx: number },
  area: Box,
): PlotStructure {
  const vertical: [number, number] = [area.bottom, area.top];
  const most = Math.max(3, Math.floor((area.bottom - area.top) / (1.5 * size.remPx)));
  const ticksOf = (axis: PictureAxis, range: AxisRange) => valueTicks(range, most, axis.steps);
  const decadePx = (area.right - area.left) / Math.log10(DOMAIN_HZ[1] / DOMAIN_HZ[0]);
  const shape = {
    ...size,
    area,
    ranges,
    leftTitle: picture.left.title,
    rightTitle: picture.right?.title ?? null,
    curves: picture.curves.map(({ id, name, shortName, style, read }) => ({
      id,
      name,
      shortName: shortName ?? name,
      colour: style.colour,
      read,
    })),
    lines: picture.lines.map(({ id, label, colour }) => ({ id, label, colour })),
  };
  return {
    ...shape,
    x: frequencyScale(DOMAIN_HZ, [area.left, area.right]),
    left: valueScale(ranges.left, vertical),
    right: ranges.right ? valueScale(ranges.right, vertical) : null,
    xTicks: frequencyTicks(DOMAIN_HZ, (decadePx * 16) / size.remPx),
    leftTicks: ticksOf(picture.left, ranges.left),
    rightTicks: picture.right && ranges.right ? ticksOf(picture.right, ranges.right) : [],
    signature: JSON.stringify(shape),
  };
}
