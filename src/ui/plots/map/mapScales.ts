import type { AlignmentMap, MapGrid } from '../../../core/design/alignmentMap/index.ts';
import { INCH_M } from '../../../core/units/exactInch.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { type Box, type ContourGrid, type FrequencyScale, frequencyScale, logTicks } from '../../../plot/index.ts';

/** A line of an axis with its place. */
interface MapTick {
  readonly px: number;
  readonly label: string;
}

/** The map on the screen: x is volume, y tuning, both logarithmic. */
export interface MapScales {
  readonly area: Box;
  /** Volumes in m³, not hertz: any positive number has a logarithm. */
  readonly volume: FrequencyScale;
  readonly tuning: FrequencyScale;
  readonly volumeTicks: readonly MapTick[];
  readonly tuningTicks: readonly MapTick[];
  readonly volumeUnit: string;
}

const MARGIN = { left: 34, right: 10, top: 8, bottom: 36 };

const ends = (values: Float64Array): readonly [number, number] => [values[0]!, values.at(-1)!];

export function mapScales(
  { volumesM3, tuningsHz }: Pick<AlignmentMap, 'volumesM3' | 'tuningsHz'>,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
  units: UnitSystem,
): MapScales {
  const area = { left: MARGIN.left, right: widthPx - MARGIN.right, top: MARGIN.top, bottom: heightPx - MARGIN.bottom };
  const volume = frequencyScale(ends(volumesM3), [area.left, area.right]);
  const tuning = frequencyScale(ends(tuningsHz), [area.bottom, area.top]);
  const perM3 = units === 'metric' ? 1000 : 1 / (12 * INCH_M) ** 3;
  const volumes = ends(volumesM3).map((value) => value * perM3) as [number, number];
  return {
    area,
    volume,
    tuning,
    volumeTicks: logTicks(volumes, area.right - area.left, 36).map((value) => ({
      px: volume.toPx(value / perM3),
      label: String(value),
    })),
    tuningTicks: logTicks(ends(tuningsHz), area.bottom - area.top, 24).map((value) => ({
      px: tuning.toPx(value),
      label: String(value),
    })),
    volumeUnit: units === 'metric' ? 'L' : 'ft³',
  };
}

/** Place of a box in the grid: fractional column (tuning) and row (volume), on logarithmic axes. */
export const gridPlace = (
  { volumesM3, tuningsHz }: Pick<AlignmentMap, 'volumesM3' | 'tuningsHz'>,
  volumeM3: number,
  tuningHz: number,
): { readonly column: number; readonly row: number } => ({
  column: shareOf(ends(tuningsHz), tuningHz) * (tuningsHz.length - 1),
  row: shareOf(ends(volumesM3), volumeM3) * (volumesM3.length - 1),
});

const shareOf = ([low, high]: readonly [number, number], value: number): number =>
  Math.log(value / low) / Math.log(high / low);

/** A quantity of the map as a grid of the plot room: columns are tunings, rows volumes. */
export const contourGrid = (map: AlignmentMap, { values, masked }: MapGrid): ContourGrid => ({
  columns: map.tuningsHz.length,
  rows: map.volumesM3.length,
  values,
  masked,
});
