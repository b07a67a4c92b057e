import { FOOT_M, INCH_M } from './exactInch.ts';
import type { QuantityKind, UnitSystem } from './quantityKind.ts';

/** A unit and the size, in the kind's inside unit, from which on it is used. */
type Step = readonly [symbol: string, from: number];

// By common practice, no source: coils in mH down to 0.1 mH, capacitors in µF down to 0.1 µF, moving masses in grams in
// every country, carpentry in millimetres below a metre.
const METRIC: Readonly<Record<QuantityKind, readonly Step[]>> = {
  length: [
    ['mm', 0],
    ['m', 1],
  ],
  area: [
    ['cm²', 0],
    ['m²', 1],
  ],
  volume: [
    ['cm³', 0],
    ['L', 1e-4],
    ['m³', 1],
  ],
  resistance: [
    ['mΩ', 0],
    ['Ω', 0.1],
    ['kΩ', 1e3],
    ['MΩ', 1e6],
  ],
  capacitance: [
    ['pF', 0],
    ['nF', 1e-9],
    ['µF', 1e-7],
    ['mF', 1e-2],
  ],
  inductance: [
    ['µH', 0],
    ['mH', 1e-4],
    ['H', 1],
  ],
  frequency: [
    ['Hz', 0],
    ['kHz', 1e3],
    ['MHz', 1e6],
  ],
  mass: [
    ['mg', 0],
    ['g', 1e-4],
    ['kg', 1],
  ],
  voltage: [
    ['mV', 0],
    ['V', 0.1],
    ['kV', 1e4],
  ],
  current: [
    ['mA', 0],
    ['A', 0.1],
  ],
  power: [
    ['mW', 0],
    ['W', 0.1],
    ['kW', 1e4],
  ],
  angle: [['°', 0]],
  temperature: [['°C', 0]],
  'thermal-resistance': [['K/W', 0]],
  pressure: [
    ['Pa', 0],
    ['hPa', 1e3],
  ],
  ratio: [['%', 0]],
  compliance: [
    ['µm/N', 0],
    ['mm/N', 1e-4],
    ['m/N', 1],
  ],
  'force-factor': [['T·m', 0]],
  'mechanical-resistance': [['kg/s', 0]],
  'flow-resistivity': [
    ['Pa·s/m²', 0],
    ['kPa·s/m²', 1e3],
  ],
  level: [['dB', 0]],
  time: [
    ['µs', 0],
    ['ms', 1e-4],
    ['s', 1],
  ],
  speed: [['m/s', 0]],
  plain: [['', 0]],
};

const IMPERIAL: Partial<Readonly<Record<QuantityKind, readonly Step[]>>> = {
  length: [
    ['in', 0],
    ['ft', 5 * FOOT_M],
  ],
  area: [
    ['in²', 0],
    ['ft²', 10 * FOOT_M ** 2],
  ],
  volume: [
    ['in³', 0],
    ['ft³', 100 * INCH_M ** 3],
  ],
  mass: [
    ['mg', 0],
    ['g', 1e-4],
    ['lb', 0.5],
  ],
  temperature: [['°F', 0]],
  speed: [['ft/s', 0]],
};

/** An everyday size, whose unit a zero is shown with; kinds left out take their smallest unit. */
export const EVERYDAY_SIZE: Partial<Readonly<Record<QuantityKind, number>>> = {
  volume: 1e-3,
  resistance: 1,
  capacitance: 1e-6,
  inductance: 1e-3,
  mass: 1e-3,
  voltage: 1,
  current: 1,
  power: 1,
  pressure: 1e5,
  compliance: 1e-3,
  'flow-resistivity': 1e3,
  time: 1e-3,
};

/**
 * The units that a quantity is shown in, smallest first, each with the size from which it is used.
 *
 * Example: `shownUnits('length', 'imperial')` begins with inches and goes on to feet at 5 ft.
 */
export const shownUnits = (kind: QuantityKind, system: UnitSystem): readonly Step[] =>
  (system === 'imperial' ? IMPERIAL[kind] : undefined) ?? METRIC[kind];
