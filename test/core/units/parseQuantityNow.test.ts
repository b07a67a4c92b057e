import { describe, expect, it } from 'vitest';
import { parseQuantityNow } from '../../../src/core/units/parseQuantityNow.ts';
import type { QuantityKind } from '../../../src/core/units/quantityKind.ts';

const codeOf = (text: string, kind: QuantityKind, unit: string): string => {
  const read = parseQuantityNow(text, kind, unit);
  return read === 'needs-expression' ? read : read.ok ? 'ok' : read.problems[0]!.code;
};

describe('parseQuantityNow', () => {
  // Right-hand sides: exact definitions (inch 25.4 mm, pound 0.45359237 kg) and decimal shifts.
  it.each<[string, QuantityKind, string, number]>([
    ['6.8 uF', 'capacitance', 'µF', 6.8e-6],
    ['6,8 µF', 'capacitance', 'µF', 6.8e-6],
    ['6.8u', 'capacitance', 'µF', 6.8e-6],
    ['6.8', 'capacitance', 'µF', 6.8e-6],
    ['820 nF', 'capacitance', 'µF', 8.2e-7],
    ['2u2', 'capacitance', 'µF', 2.2e-6],
    ['0.47 mH', 'inductance', 'mH', 4.7e-4],
    ['0.47m', 'inductance', 'µH', 4.7e-4],
    ['4R7', 'resistance', 'Ω', 4.7],
    ['8Ω', 'resistance', 'Ω', 8],
    ['1.2 kohm', 'resistance', 'Ω', 1200],
    ['1.2k', 'resistance', 'Ω', 1200],
    ['12 L', 'volume', 'ft³', 0.012],
    ['1.2 ft^3', 'volume', 'L', 1.2 * 0.3048 ** 3],
    ['1.2 cu. ft', 'volume', 'L', 1.2 * 0.3048 ** 3],
    ['34 in²', 'area', 'cm²', 34 * 0.0254 ** 2],
    ['18', 'length', 'mm', 0.018],
    ['4"', 'length', 'mm', 0.1016],
    ['6 ft', 'length', 'mm', 1.8288],
    ['−34 mm', 'length', 'mm', -0.034],
    ['1e3 Hz', 'frequency', 'Hz', 1000],
    ['3.15 kHz', 'frequency', 'Hz', 3150],
    ['10 000', 'frequency', 'Hz', 10000],
    ['1,234.5 mm', 'length', 'mm', 1.2345],
    ['1.234,5 mm', 'length', 'mm', 1.2345],
    ['0,470 mH', 'inductance', 'mH', 4.7e-4],
    ['68 °F', 'temperature', '°C', 20],
    ['293.15 K', 'temperature', '°C', 20],
    ['50 %', 'ratio', '', 0.5],
    ['50', 'ratio', '%', 0.5],
    ['30°', 'angle', '°', 30],
    ['-3 dB', 'level', 'dB', -3],
    ['0.9 mm/N', 'compliance', 'mm/N', 9e-4],
    ['7.2 N/A', 'force-factor', 'T·m', 7.2],
    ['7.2 Tm', 'force-factor', 'T·m', 7.2],
    ['1.2 N s/m', 'mechanical-resistance', 'kg/s', 1.2],
    ['5 kPa·s/m²', 'flow-resistivity', 'kPa·s/m²', 5000],
    ['1013 hPa', 'pressure', 'Pa', 101300],
    ['2.83 V', 'voltage', 'V', 2.83],
    ['60 w', 'power', 'W', 60],
    ['1 lb', 'mass', 'g', 0.45359237],
    ['0.712', 'plain', '', 0.712],
  ])('reads %s as %s', (text, kind, unit, value) => {
    const read = parseQuantityNow(text, kind, unit);
    if (read === 'needs-expression' || !read.ok) throw new Error(JSON.stringify(read));
    expect(Math.abs(read.value / value - 1)).toBeLessThan(1e-14);
  });

  it('gives the number nearest to the decimal fraction, so that a preferred value is one exactly', () => {
    expect(parseQuantityNow('6.8 uF', 'capacitance', 'µF')).toEqual({ ok: true, value: 6.8e-6 });
    expect(parseQuantityNow('0.33 mH', 'inductance', 'mH')).toEqual({ ok: true, value: 0.33e-3 });
  });

  it.each<[string, QuantityKind, string, string]>([
    ['', 'length', 'mm', 'units.empty'],
    ['   ', 'length', 'mm', 'units.empty'],
    ['abc', 'length', 'mm', 'units.not-understood'],
    ['3 furlong', 'length', 'mm', 'units.unknown-unit'],
    ['3 MH', 'inductance', 'mH', 'units.unknown-unit'],
    ['3 V', 'length', 'mm', 'units.wrong-kind'],
    ['3 mm', 'capacitance', 'µF', 'units.wrong-kind'],
    ['1,500', 'length', 'mm', 'units.ambiguous-comma'],
    ['12,345.6.7', 'length', 'mm', 'units.not-understood'],
    ['1e999', 'length', 'mm', 'units.not-finite'],
    ['3–5 mm', 'length', 'mm', 'needs-expression'],
    ['3/4 in', 'length', 'mm', 'needs-expression'],
    ['1 1/2 in', 'length', 'mm', 'needs-expression'],
    [`5' 3"`, 'length', 'mm', 'needs-expression'],
    ['2*3', 'plain', '', 'needs-expression'],
    ['5 constructor', 'length', 'mm', 'units.unknown-unit'],
    ['5 __proto__', 'length', 'mm', 'units.unknown-unit'],
    ['9'.repeat(65), 'length', 'mm', 'units.too-long'],
  ])('answers %j in a field of %s with %s %s', (text, kind, unit, code) => {
    expect(codeOf(text, kind, unit)).toBe(code);
  });

  it('throws when a caller names a unit that the kind does not have', () => {
    expect(() => parseQuantityNow('3', 'length', 'µF')).toThrow(RangeError);
  });
});
