import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLetterCode } from '../../../src/core/units/letterCode.ts';
import { TOLERANCE_LETTERS } from '../../../src/core/units/toleranceLetters.ts';

describe('readLetterCode', () => {
  // Examples of IEC 60062 as an encyclopedia article gives them.
  it.each([
    ['R47', 'resistance', 0.47],
    ['4R7', 'resistance', 4.7],
    ['470R', 'resistance', 470],
    ['4K7', 'resistance', 4700],
    ['47K3', 'resistance', 47300],
    ['4M7', 'resistance', 4.7e6],
    ['4n7', 'capacitance', 4.7e-9],
    ['1u0', 'capacitance', 1e-6],
    ['2µ2', 'capacitance', 2.2e-6],
    ['2m2', 'inductance', 2.2e-3],
  ] as const)('%s as a %s is %d', (code, kind, value) => {
    expect(readLetterCode(code, kind)).toEqual({ value, tolerancePercent: null });
  });

  it('reads a tolerance letter after the digits', () => {
    expect(readLetterCode('4K7J', 'resistance')).toEqual({ value: 4700, tolerancePercent: 5 });
    expect(readLetterCode('100nK', 'capacitance')).toEqual({ value: 1e-7, tolerancePercent: 10 });
  });

  it.each([
    ['R', 'resistance'],
    ['47', 'resistance'],
    ['4x7', 'resistance'],
    ['4u7', 'resistance'],
    ['4R7', 'capacitance'],
    ['4R7Q', 'resistance'],
    ['4.7R', 'resistance'],
    ['', 'resistance'],
    ['4m7', 'resistance'],
    ['-4R7', 'resistance'],
  ] as const)('%j as a %s is no such marking', (code, kind) => {
    expect(readLetterCode(code, kind)).toBeNull();
  });

  it('puts the letter in the place of the point (seed 44)', () => {
    const powers = { R: 0, K: 3, M: 6 } as const;
    fc.assert(
      fc.property(
        fc.nat(999),
        fc.constantFrom<keyof typeof powers>('R', 'K', 'M'),
        fc.nat(99),
        (whole, letter, fraction) =>
          readLetterCode(`${whole}${letter}${fraction}`, 'resistance')?.value ===
          Number(`${whole}.${fraction}e${powers[letter]}`),
      ),
      { seed: 44 },
    );
  });

  it('has tolerances that grow from B to N', () => {
    // IEC 60062: F is 1 % and K 10 % (looked up), the others from memory.
    const percents = [...'BCDFGHJKMN'].map((letter) => TOLERANCE_LETTERS.get(letter)!);
    expect(percents).toEqual([0.1, 0.25, 0.5, 1, 2, 3, 5, 10, 20, 30]);
  });
});
