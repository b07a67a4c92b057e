import { FOOT_M, INCH_M, POUND_KG } from './exactInch.ts';
import type { QuantityKind } from './quantityKind.ts';

/** One unit of people's: what is shown, what may be typed, and what it is worth inside. */
export interface UnitEntry {
  readonly symbol: string;
  /** Accepted spellings in plain letters (µ as u, Ω as ohm, · as *), besides the symbol. */
  readonly names: readonly string[];
  /** Spellings that are a unit in this kind of field only: a lone prefix, or letters that mean something else elsewhere. */
  readonly shorthand: readonly string[];
  /** Inside = typed × factor + offset. */
  readonly factor: number;
  readonly offset: number;
  /** The same unit in the notation of the general units library; null where arithmetic with it makes no sense. */
  readonly arithmetic: string | null;
}

const unit = (
  symbol: string,
  factor: number,
  arithmetic: string | null,
  names: readonly string[],
  shorthand: readonly string[] = [],
  offset = 0,
): UnitEntry => ({ symbol, names, shorthand, factor, offset, arithmetic });

/** A pound-force, with standard gravity, on a square inch. */
const PSI_PA = (POUND_KG * 9.80665) / INCH_M ** 2;

/** Units by kind; the first is the one used inside. */
export const UNIT_TABLE: Readonly<Record<QuantityKind, readonly UnitEntry[]>> = {
  length: [
    unit('m', 1, 'm', ['metre', 'metres', 'meter', 'meters']),
    unit('cm', 1e-2, 'cm', []),
    unit('mm', 1e-3, 'mm', [], ['MM']),
    unit('µm', 1e-6, 'um', ['um']),
    unit('in', INCH_M, 'inch', ['inch', 'inches', '"']),
    unit('ft', FOOT_M, 'ft', ['foot', 'feet', "'"]),
  ],
  area: [
    unit('m²', 1, 'm^2', ['m^2', 'm2']),
    unit('cm²', 1e-4, 'cm^2', ['cm^2', 'cm2']),
    unit('mm²', 1e-6, 'mm^2', ['mm^2', 'mm2']),
    unit('in²', INCH_M ** 2, 'inch^2', ['in^2', 'in2', 'sqin']),
    unit('ft²', FOOT_M ** 2, 'ft^2', ['ft^2', 'ft2', 'sqft']),
  ],
  volume: [
    unit('m³', 1, 'm^3', ['m^3', 'm3']),
    unit('L', 1e-3, 'L', ['l', 'litre', 'litres', 'liter', 'liters', 'dm^3', 'dm3']),
    unit('mL', 1e-6, 'ml', ['ml']),
    unit('cm³', 1e-6, 'cm^3', ['cm^3', 'cm3', 'cc']),
    unit('in³', INCH_M ** 3, 'inch^3', ['in^3', 'in3', 'cuin']),
    unit('ft³', FOOT_M ** 3, 'ft^3', ['ft^3', 'ft3', 'cuft']),
  ],
  resistance: [
    unit('Ω', 1, 'ohm', ['ohm', 'ohms'], ['R', 'r']),
    unit('mΩ', 1e-3, 'mohm', ['mohm']),
    unit('kΩ', 1e3, 'kohm', ['kohm'], ['k', 'K']),
    unit('MΩ', 1e6, 'Mohm', ['Mohm'], ['M']),
  ],
  capacitance: [
    unit('F', 1, 'F', ['farad']),
    unit('mF', 1e-3, 'mF', []),
    unit('µF', 1e-6, 'uF', ['uF', 'mfd', 'MFD'], ['u', 'U']),
    unit('nF', 1e-9, 'nF', [], ['n', 'N']),
    unit('pF', 1e-12, 'pF', [], ['p', 'P']),
  ],
  inductance: [
    unit('H', 1, 'H', ['henry']),
    unit('mH', 1e-3, 'mH', [], ['m']),
    unit('µH', 1e-6, 'uH', ['uH'], ['u', 'U']),
    unit('nH', 1e-9, 'nH', [], ['n']),
  ],
  frequency: [unit('Hz', 1, 'Hz', ['hz']), unit('kHz', 1e3, 'kHz', ['khz'], ['k', 'K']), unit('MHz', 1e6, 'MHz', [])],
  mass: [
    unit('kg', 1, 'kg', []),
    unit('g', 1e-3, 'g', ['gram', 'grams']),
    unit('mg', 1e-6, 'mg', []),
    unit('lb', POUND_KG, 'lb', ['lbs', 'pound', 'pounds']),
    unit('oz', POUND_KG / 16, 'oz', ['ounce', 'ounces']),
  ],
  voltage: [unit('V', 1, 'V', ['volt', 'volts']), unit('mV', 1e-3, 'mV', []), unit('kV', 1e3, 'kV', [])],
  current: [unit('A', 1, 'A', ['amp', 'amps', 'ampere']), unit('mA', 1e-3, 'mA', [])],
  power: [unit('W', 1, 'W', ['watt', 'watts']), unit('mW', 1e-3, 'mW', []), unit('kW', 1e3, 'kW', [])],
  angle: [unit('°', 1, 'deg', ['deg', 'degree', 'degrees']), unit('rad', 180 / Math.PI, 'rad', ['radian', 'radians'])],
  temperature: [
    unit('°C', 1, null, ['degC'], ['C', 'c']),
    unit('°F', 5 / 9, null, ['degF'], ['F', 'f'], -160 / 9),
    unit('K', 1, null, ['kelvin'], ['k'], -273.15),
  ],
  'thermal-resistance': [unit('K/W', 1, 'K/W', ['degC/W'])],
  pressure: [
    unit('Pa', 1, 'Pa', []),
    unit('hPa', 1e2, 'hPa', []),
    unit('kPa', 1e3, 'kPa', []),
    unit('mbar', 1e2, 'mbar', []),
    unit('bar', 1e5, 'bar', []),
    unit('psi', PSI_PA, 'psi', []),
  ],
  ratio: [unit('', 1, null, ['']), unit('%', 1e-2, null, ['percent', 'per cent'])],
  compliance: [unit('m/N', 1, 'm/N', []), unit('mm/N', 1e-3, 'mm/N', []), unit('µm/N', 1e-6, 'um/N', ['um/N'])],
  'force-factor': [unit('T·m', 1, 'T m', ['T*m', 'T m', 'N/A'], ['Tm', 'tm'])],
  'mechanical-resistance': [unit('kg/s', 1, 'kg/s', ['N*s/m', 'N s/m', 'Ns/m'])],
  'flow-resistivity': [
    unit('Pa·s/m²', 1, 'Pa s/m^2', ['Pa*s/m^2', 'Pa s/m^2', 'Pas/m2', 'N*s/m^4', 'Ns/m4', 'rayl/m']),
    unit('kPa·s/m²', 1e3, 'kPa s/m^2', ['kPa*s/m^2', 'kPa s/m^2', 'kPas/m2']),
  ],
  level: [unit('dB', 1, null, ['db'])],
  time: [unit('s', 1, 's', ['sec', 'second', 'seconds']), unit('ms', 1e-3, 'ms', []), unit('µs', 1e-6, 'us', ['us'])],
  speed: [unit('m/s', 1, 'm/s', []), unit('ft/s', FOOT_M, 'ft/s', [])],
  plain: [unit('', 1, null, [''])],
};
