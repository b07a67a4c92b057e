import type { AlignmentMap, MapGrid } from '../../../core/design/alignmentMap/index.ts';
import { formatNumber } from '../../../core/units/formatNumber.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { readGrid } from '../../../plot/index.ts';
import { decibelText, hertzText, lengthText, volumeText } from './mapQuantities.ts';
import { contourGrid, gridPlace } from './mapScales.ts';

/** One box of the map in words: which box, and what it does. */
export interface MapReadout {
  readonly box: string;
  readonly figures: readonly { readonly name: string; readonly value: string }[];
}

/** What the map holds at a volume and tuning, between its points. */
export function mapReadout(map: AlignmentMap, volumeM3: number, tuningHz: number, units: UnitSystem): MapReadout {
  const { column, row } = gridPlace(map, volumeM3, tuningHz);
  const read = (grid: MapGrid, text: (value: number) => string, none: string): string => {
    const value = readGrid(contourGrid(map, grid), column, row);
    return value === null ? none : text(value);
  };
  return {
    box: `${volumeText(volumeM3, units)} tuned to ${hertzText(tuningHz)}`,
    figures: [
      { name: 'cut-off', value: read(map.cutOffHz, hertzText, 'off the map') },
      { name: 'ripple', value: read(map.rippleDb, decibelText, 'off the map') },
      { name: 'excursion', value: read(map.excursionPeakM, (m) => lengthText(m, units), 'off the map') },
      { name: 'port', value: read(map.portLengthM, (m) => `${lengthText(m, units)} long`, 'none so short') },
      {
        name: 'port air',
        value: read(map.portSpeedPeakMPerS, (speed) => `${formatNumber(speed, 2)} m/s peak`, 'no such port'),
      },
    ],
  };
}

export const readoutText = ({ box, figures }: MapReadout): string =>
  `${box}: ${figures.map(({ name, value }) => `${name} ${value}`).join(', ')}`;
