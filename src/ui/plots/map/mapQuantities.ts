import type { AlignmentMap, MapGrid } from '../../../core/design/alignmentMap/index.ts';
import { INCH_M } from '../../../core/units/exactInch.ts';
import { formatNumber } from '../../../core/units/formatNumber.ts';
import { formatQuantity, quantityText } from '../../../core/units/formatQuantity.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { roundLevels } from '../../../plot/index.ts';

/** One family of contours: what is drawn, how its numbers read. */
export interface MapQuantity {
  readonly id: 'cut-off' | 'ripple' | 'excursion' | 'port-length';
  readonly button: string;
  readonly explains: string;
  readonly grid: (map: AlignmentMap) => MapGrid;
  readonly levels: (grid: MapGrid, units: UnitSystem) => readonly number[];
  readonly text: (value: number, units: UnitSystem) => string;
}

const MOST_LEVELS = 9;
/** Lengths of port that somebody cuts, in mm and in inches. */
const PORT_LENGTHS = {
  metric: [20, 50, 100, 150, 200, 300, 400, 600, 1000],
  imperial: [1, 2, 4, 6, 8, 12, 16, 24, 36],
};
/** What the ear and the trade tell apart (common practice, no source). */
const RIPPLES_DB = [0.2, 0.5, 1, 2, 3, 6, 10];

export const lengthText = (m: number, units: UnitSystem): string => quantityText(formatQuantity(m, 'length', units, 2));
export const volumeText = (m3: number, units: UnitSystem): string =>
  quantityText(formatQuantity(m3, 'volume', units, 3));
export const hertzText = (hz: number): string => quantityText(formatQuantity(hz, 'frequency', 'metric', 3));
export const decibelText = (db: number): string => `${db.toFixed(1).replace('-', '−')} dB`;

const range = ({ values, masked }: MapGrid): readonly [number, number] => {
  let low = Number.POSITIVE_INFINITY;
  let high = 0;
  values.forEach((value, at) => {
    if (masked[at] === 1 || !(value > 0)) return;
    low = Math.min(low, value);
    high = Math.max(high, value);
  });
  return [low, high];
};
const between = (grid: MapGrid, perSi: number): readonly number[] => {
  const [low, high] = range(grid);
  return roundLevels(low * perSi, high * perSi, MOST_LEVELS).map((level) => level / perSi);
};
const perMetre = (units: UnitSystem): number => (units === 'metric' ? 1000 : 1 / INCH_M);

export const MAP_QUANTITIES: readonly MapQuantity[] = [
  {
    id: 'cut-off',
    button: 'cut-off',
    explains:
      'Where the level has fallen by 3 dB below the pass band. Box and driver alone: no crossover, no baffle, no room. Where contours crowd together, the response has a dip 3 dB deep.',
    grid: (map) => map.cutOffHz,
    levels: (grid) => between(grid, 1),
    text: hertzText,
  },
  {
    id: 'ripple',
    button: 'ripple',
    explains: 'Difference between the highest peak and the deepest dip above the cut-off.',
    grid: (map) => map.rippleDb,
    levels: () => RIPPLES_DB,
    text: (db) => `${formatNumber(db, 2)} dB`,
  },
  {
    id: 'excursion',
    button: 'excursion',
    explains:
      'Greatest cone excursion at the set drive, one way, peak: above the cut-off only; the bar counts from 20 Hz.',
    grid: (map) => map.excursionPeakM,
    levels: (grid, units) => between(grid, perMetre(units)),
    text: lengthText,
  },
  {
    id: 'port-length',
    button: 'port length',
    explains: 'Length of the port for each tuning, with the cross-section it has now.',
    grid: (map) => map.portLengthM,
    levels: (_grid, units) => PORT_LENGTHS[units].map((length) => length / perMetre(units)),
    text: lengthText,
  },
];
