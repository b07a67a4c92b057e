import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createExpressionReader } from '../../../src/core/units/expression.ts';
import { parseQuantity } from '../../../src/core/units/parseQuantity.ts';
import { parseQuantityNow } from '../../../src/core/units/parseQuantityNow.ts';
import type { QuantityKind } from '../../../src/core/units/quantityKind.ts';
import { UNIT_TABLE } from '../../../src/core/units/unitTable.ts';

const read = createExpressionReader();
const kinds = Object.keys(UNIT_TABLE) as QuantityKind[];
const INCH = 0.0254;

const readValue = (text: string, kind: QuantityKind, unit: string): number => {
  const result = read(text, kind, unit);
  if (!result.ok) throw new Error(`${text}: ${result.problems[0]?.code}`);
  return result.value;
};
const codeOf = (text: string, kind: QuantityKind = 'length', unit = 'mm'): string => {
  const result = read(text, kind, unit);
  return result.ok ? `ok ${result.value}` : result.problems[0]!.code;
};

describe('createExpressionReader', () => {
  // Independent computation: the same arithmetic written out.
  it.each<[string, QuantityKind, string, number]>([
    ['3/4 in', 'length', 'mm', 0.75 * INCH],
    ['3/4"', 'length', 'mm', 0.75 * INCH],
    ['1 1/2 in', 'length', 'mm', 1.5 * INCH],
    ['1½″', 'length', 'mm', 1.5 * INCH],
    ['-1 1/2 in', 'length', 'mm', -1.5 * INCH],
    ['4 5/8', 'length', 'in', 4.625 * INCH],
    ['2 ft 3 in', 'length', 'mm', 27 * INCH],
    [`5' 3 1/2"`, 'length', 'mm', 63.5 * INCH],
    ['3/4 in + 18 mm', 'length', 'mm', 0.75 * INCH + 0.018],
    ['600 - 2×18', 'length', 'mm', 0.564],
    ['1 m / 3', 'length', 'mm', 1 / 3],
    ['1/2 in^2', 'area', 'cm²', 0.5 * INCH ** 2],
    ['pi*(4 in)^2', 'area', 'cm²', Math.PI * (4 * INCH) ** 2],
    ['1.2 ft^3 + 2 L', 'volume', 'L', 1.2 * (12 * INCH) ** 3 + 0.002],
    ['300 mm × 200 mm × 12 in', 'volume', 'L', 0.06 * 12 * INCH],
    ['12.4 - 0.8', 'volume', 'L', 0.0116],
    ['2*4.7 uF + 1.5 uF', 'capacitance', 'µF', 10.9e-6],
    ['2*4u7 + 1u5', 'capacitance', 'µF', 10.9e-6],
    ['4R7 + 3R3', 'resistance', 'Ω', 8],
    ['1/(1/(8 ohm) + 1/(8 ohm))', 'resistance', 'Ω', 4],
    ['1/(2 ms)', 'frequency', 'Hz', 500],
    ['0.8 mm/N + 0.1 mm/N', 'compliance', 'mm/N', 9e-4],
    ['2 * 3.6 T*m', 'force-factor', 'T·m', 7.2],
    ['(20 + 3) °C', 'temperature', '°C', 23],
    ['(50 + 18) °F', 'temperature', '°C', 20],
    ['50 + 5 %', 'ratio', '%', 0.55],
    ['88 - 3 dB', 'level', 'dB', 85],
    ['1/2 + 0.212', 'plain', '', 0.712],
  ])('reads %s as %s', (text, kind, unit, value) => {
    expect(Math.abs(readValue(text, kind, unit) / value - 1)).toBeLessThan(1e-12);
  });

  it('agrees with the table on every unit and every spelling', () => {
    let compared = 0;
    for (const kind of kinds) {
      const shown = UNIT_TABLE[kind][0]!.symbol;
      for (const entry of UNIT_TABLE[kind]) {
        for (const name of [entry.symbol, ...entry.names]) {
          const text = `7.25 ${name}`;
          const now = parseQuantityNow(text, kind, shown);
          if (now === 'needs-expression' || !now.ok) throw new Error(text);
          const later = read(text, kind, shown);
          // Run-together products (Ns/m) are spellings of the table alone.
          if (!later.ok && later.problems[0]!.code === 'units.unknown-unit') continue;
          if (!later.ok) throw new Error(`${text}: ${later.problems[0]!.code}`);
          // The library has the pound-force per square inch to 11 digits.
          expect(Math.abs(later.value / now.value - 1), text).toBeLessThan(1e-10);
          compared++;
        }
      }
    }
    expect(compared).toBeGreaterThan(110);
  });

  it('agrees with the table on random numbers (seed 41)', () => {
    const choice = fc.constantFrom(...kinds.flatMap((kind) => UNIT_TABLE[kind].map((entry) => ({ kind, entry }))));
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), choice, (x, { kind, entry }) => {
        const number = x.toFixed(4);
        const now = parseQuantityNow(number, kind, entry.symbol);
        const later = read(number, kind, entry.symbol);
        if (now === 'needs-expression' || !now.ok || !later.ok) return false;
        return Math.abs(now.value - later.value) <= 1e-12 * Math.abs(now.value);
      }),
      { seed: 41 },
    );
  });

  it.each([
    ['4 + 3 in', 'units.mixed-units'],
    ['2 V * 3', 'units.wrong-kind'],
    ['2 in * 3 in', 'units.wrong-kind'],
    ['1/0', 'units.not-finite'],
    ['(((((1)))))', 'units.too-deep'],
    ['2 furlong + 1', 'units.unknown-unit'],
    ['3–5 mm', 'units.not-understood'],
  ])('refuses %s with %s', (text, code) => {
    expect(codeOf(text)).toBe(code);
  });

  it.each([
    'constructor',
    '__proto__',
    'toString()',
    'valueOf',
    'hasOwnProperty',
    'cos.constructor("return 1")()',
    'f(x)=x',
    'f(1)',
    'x=3',
    'a.b',
    'a[1]',
    '[1,2]',
    '{a:1}',
    '"text"',
    "'text'",
    'evaluate(1)',
    'parse(1)',
    'import(1)',
    'createUnit(1)',
    'sum(1:5e6)',
    'range(1,1e7)',
    'zeros(3000,3000)',
    '1:1e9',
    '2^1e9',
    '9^9^9^9',
    '2^0.5',
    '2^2^2^2^2^2',
    '5!',
    '170!',
    '1 and 2',
    'not 1',
    '1 to 2',
    '1 in 2',
    '1 mod 2',
    'true',
    'null',
    'undefined',
    'NaN',
    'Infinity',
    '-Infinity',
    'i',
    'e',
    '2 i',
    '0x10',
    '0b101',
    '0o17',
    '1 == 1',
    '1 ? 2 : 3',
    '1; 2',
    '1 # 2',
    '1 % 2',
    '1 | 2',
    '~1',
    "2'",
    '@',
    '`',
    '\\',
    '1//2',
    '(',
    ')',
    '()',
    '(1',
    '1)',
    '+',
    '1+',
    '*1',
    '1..2',
    '1.2.3',
    '--',
    '1 2 3',
    '((((((((((1))))))))))',
    `${'('.repeat(40)}1${')'.repeat(20)}`,
    '1+'.repeat(31),
    '1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1',
    '1'.repeat(64),
    `1${'+1'.repeat(2000)}`,
    '('.repeat(3000),
    '\u0000',
    '１２',
    '1 ℵ',
    'ft',
    'mm mm',
    'pi pi',
    '1e400',
    '1e308*1e308',
  ])('meets %j with a refusal or a finite number, never by throwing', (text) => {
    for (const kind of ['length', 'plain', 'temperature', 'resistance'] as const) {
      const result = read(text, kind, UNIT_TABLE[kind][0]!.symbol);
      if (result.ok) expect(Number.isFinite(result.value)).toBe(true);
      else expect(result.problems).toHaveLength(1);
    }
  });

  it('refuses all that could reach beyond numbers and units', () => {
    const reaching = [
      'constructor',
      'f(1)',
      'x=3',
      'a.b',
      '[1,2]',
      'sum(1)',
      '1:9',
      'true',
      'NaN',
      'i',
      '0x10',
      '1 in 2',
    ];
    for (const text of reaching) expect(codeOf(text, 'plain', ''), text).toMatch(/^units\./);
  });

  it('never throws on random text (seed 42)', () => {
    const soup = fc.string({ unit: fc.constantFrom(...'0123456789.,+-*/^()%°"\' µΩ½²inftmuFVpe'), maxLength: 24 });
    fc.assert(
      fc.property(soup, fc.constantFrom(...kinds), (text, kind) => {
        const unit = UNIT_TABLE[kind][0]!.symbol;
        const now = parseQuantityNow(text, kind, unit);
        const later = read(text, kind, unit);
        if (later.ok && !Number.isFinite(later.value)) return false;
        return now === 'needs-expression' || !now.ok || Number.isFinite(now.value);
      }),
      { seed: 42, numRuns: 2000 },
    );
  });

  it('never reads a text at once as another value than with arithmetic (seed 43)', () => {
    const soup = fc.string({ unit: fc.constantFrom(...'0123456789.,- µumkRinftF'), minLength: 1, maxLength: 8 });
    let both = 0;
    fc.assert(
      fc.property(soup, fc.constantFrom<QuantityKind>('length', 'capacitance', 'resistance'), (text, kind) => {
        const unit = UNIT_TABLE[kind][0]!.symbol;
        const now = parseQuantityNow(text, kind, unit);
        const later = read(text, kind, unit);
        if (now === 'needs-expression' || !now.ok || !later.ok) return true;
        both++;
        return Math.abs(now.value - later.value) <= 1e-12 * Math.abs(now.value);
      }),
      { seed: 43, numRuns: 4000 },
    );
    expect(both).toBeGreaterThan(300);
  });
});

describe('parseQuantity', () => {
  it('fetches the arithmetic only for what needs it', async () => {
    expect(await parseQuantity('6,8 uF', 'capacitance', 'µF')).toEqual({ ok: true, value: 6.8e-6 });
    expect(await parseQuantity('3/4 in', 'length', 'mm')).toEqual({ ok: true, value: 0.01905 });
    expect((await parseQuantity('3 V + 1', 'length', 'mm')).ok).toBe(false);
  });
});
