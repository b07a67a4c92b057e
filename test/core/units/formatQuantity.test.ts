import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatInUnit, formatQuantity, quantityText, suitableUnit } from '../../../src/core/units/formatQuantity.ts';
import { parseQuantityNow } from '../../../src/core/units/parseQuantityNow.ts';
import type { QuantityKind, UnitSystem } from '../../../src/core/units/quantityKind.ts';
import { UNIT_TABLE } from '../../../src/core/units/unitTable.ts';

describe('formatQuantity', () => {
  it.each<[number, QuantityKind, UnitSystem, number, string]>([
    [6.8e-6, 'capacitance', 'metric', 3, '6.8 µF'],
    [2.2e-7, 'capacitance', 'metric', 3, '0.22 µF'],
    [4.7e-8, 'capacitance', 'metric', 3, '47 nF'],
    [0.27e-3, 'inductance', 'metric', 3, '0.27 mH'],
    [0.0246, 'volume', 'metric', 3, '24.6 L'],
    [0.0246, 'volume', 'imperial', 2, '0.87 ft³'],
    [0.118, 'length', 'metric', 3, '118 mm'],
    [2.5, 'length', 'metric', 3, '2.5 m'],
    [2.5, 'length', 'imperial', 3, '8.2 ft'],
    [0.118, 'length', 'imperial', 3, '4.65 in'],
    [-0.034, 'length', 'metric', 3, '−34 mm'],
    [43, 'frequency', 'metric', 3, '43 Hz'],
    [3150, 'frequency', 'metric', 3, '3.15 kHz'],
    [8.2, 'resistance', 'metric', 3, '8.2 Ω'],
    [0.022, 'mass', 'imperial', 3, '22 g'],
    [20, 'temperature', 'imperial', 3, '68 °F'],
    [30, 'angle', 'metric', 3, '30°'],
    [0.5, 'ratio', 'metric', 3, '50 %'],
    [0, 'resistance', 'metric', 3, '0 Ω'],
    [0, 'frequency', 'metric', 3, '0 Hz'],
    [0.712, 'plain', 'metric', 3, '0.712'],
  ])('%d as %s (%s, %d digits) is %s', (value, kind, system, digits, text) => {
    expect(quantityText(formatQuantity(value, kind, system, digits))).toBe(text);
  });

  it('takes the next unit when rounding reaches it', () => {
    expect(quantityText(formatQuantity(999.7, 'frequency', 'metric', 3))).toBe('1 kHz');
    expect(quantityText(formatQuantity(999.7, 'frequency', 'metric', 4))).toBe('999.7 Hz');
    expect(quantityText(formatQuantity(0.9996, 'length', 'metric', 3))).toBe('1 m');
  });

  it('keeps zeros on demand and keeps a unit that is asked for', () => {
    expect(formatQuantity(8.2, 'resistance', 'metric', 3, 'keep')).toEqual({ number: '8.20', unit: 'Ω' });
    expect(formatInUnit(1.05, 'length', 'mm', 3)).toEqual({ number: '1050', unit: 'mm' });
    expect(() => formatInUnit(1, 'length', 'Hz', 3)).toThrow(RangeError);
  });

  it('is read back within its digits, in every kind and both systems (seed 45)', () => {
    const kinds = Object.keys(UNIT_TABLE) as QuantityKind[];
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.constantFrom<UnitSystem>('metric', 'imperial'),
        fc.double({ min: -9, max: 5, noNaN: true }),
        (kind, system, power) => {
          const value = 10 ** power;
          const { number, unit } = formatQuantity(value, kind, system, 6);
          const read = parseQuantityNow(number, kind, unit);
          if (read === 'needs-expression' || !read.ok) return false;
          // Half a unit of the sixth digit; the Fahrenheit scale rounds before its offset of 32.
          return Math.abs(read.value - value) <= 0.51e-5 * value + (kind === 'temperature' ? 1e-3 : 1e-12 * value);
        },
      ),
      { seed: 45, numRuns: 1000 },
    );
  });

  it('never picks a smaller unit for a greater value (seed 46)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -12, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (power, more) => {
          const factor = (x: number) => {
            const symbol = suitableUnit(10 ** x, 'capacitance', 'metric', 3);
            return UNIT_TABLE.capacitance.find((entry) => entry.symbol === symbol)!.factor;
          };
          return factor(power) <= factor(power + more);
        },
      ),
      { seed: 46 },
    );
  });
});
