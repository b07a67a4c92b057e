import type { DerivedDriver } from '../../../core/acoustics/driver/deriveDriver.ts';
import type { DriverEntered } from '../../../core/document/schema.ts';
import type { QuantityKind } from '../../../core/units/quantityKind.ts';
import type { Stepping } from '../../fields/stepping.ts';

type NumberField = Exclude<keyof DriverEntered, 'semiInductance'>;

/** One number of a data sheet: its symbol, what it is, and what it would be when the others decide. */
export interface DriverField {
  readonly key: NumberField;
  readonly symbol: string;
  readonly words: string;
  readonly kind: QuantityKind;
  readonly stepping?: Stepping;
  readonly derived?: (driver: DerivedDriver) => number;
}

const digit: Stepping = { by: 'digit' };

/** In the order of most data sheets: coil, resonance, motor and moving parts, limits. */
export const DRIVER_FIELDS: readonly DriverField[] = [
  {
    key: 'nominalOhm',
    symbol: 'Z',
    words: 'nominal impedance',
    kind: 'resistance',
    stepping: { by: 'linear', step: 1 },
  },
  {
    key: 'reOhm',
    symbol: 'Re',
    words: 'coil resistance',
    kind: 'resistance',
    stepping: { by: 'linear', step: 0.1 },
    derived: (d) => d.parameters.reOhm,
  },
  { key: 'leH', symbol: 'Le', words: 'coil inductance', kind: 'inductance', stepping: digit },
  { key: 'fsHz', symbol: 'fs', words: 'resonance', kind: 'frequency', derived: (d) => d.derived.fsHz },
  { key: 'qms', symbol: 'Qms', words: 'mechanical Q', kind: 'plain', stepping: digit, derived: (d) => d.derived.qms },
  { key: 'qes', symbol: 'Qes', words: 'electrical Q', kind: 'plain', stepping: digit, derived: (d) => d.derived.qes },
  { key: 'qts', symbol: 'Qts', words: 'total Q', kind: 'plain', stepping: digit, derived: (d) => d.derived.qts },
  {
    key: 'vasM3',
    symbol: 'Vas',
    words: 'equivalent volume',
    kind: 'volume',
    stepping: digit,
    derived: (d) => d.derived.vasM3,
  },
  { key: 'sdM2', symbol: 'Sd', words: 'cone area', kind: 'area', derived: (d) => d.parameters.sdM2 },
  { key: 'blTm', symbol: 'Bl', words: 'force factor', kind: 'force-factor', derived: (d) => d.parameters.blTm },
  { key: 'mmsKg', symbol: 'Mms', words: 'moving mass, air included', kind: 'mass', derived: (d) => d.parameters.mmsKg },
  { key: 'cmsMPerN', symbol: 'Cms', words: 'compliance', kind: 'compliance', derived: (d) => d.parameters.cmsMPerN },
  {
    key: 'rmsKgPerS',
    symbol: 'Rms',
    words: 'mechanical resistance',
    kind: 'mechanical-resistance',
    derived: (d) => d.parameters.rmsKgPerS,
  },
  {
    key: 'sensitivityDb2V83',
    symbol: 'SPL',
    words: 'sensitivity, dB re 20 µPa, 2.83 V, 1 m, half space',
    kind: 'level',
    derived: (d) => d.derived.sensitivityDb2V83,
  },
  {
    key: 'xmaxM',
    symbol: 'Xmax',
    words: 'linear excursion, one way',
    kind: 'length',
    stepping: { by: 'linear', step: 1e-4 },
  },
  { key: 'ratedPowerW', symbol: 'P', words: 'rated power', kind: 'power' },
];
