import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNumber, roundToDigits } from '../../../src/core/units/formatNumber.ts';

describe('formatNumber', () => {
  it.each<[number, number, string]>([
    [8.2, 3, '8.2'],
    [8, 3, '8'],
    [10, 2, '10'],
    [100, 3, '100'],
    [0.1, 3, '0.1'],
    [99.96, 3, '100'],
    [9.996, 3, '10'],
    [1234.5, 3, '1235'],
    [-0.8696, 2, '−0.87'],
    [0.000123456, 3, '0.000123'],
    [0, 3, '0'],
    [-0, 3, '0'],
    [-1e-30, 3, '0'],
    [1e6, 3, '1000000'],
  ])('writes %d with %d digits as %s', (value, digits, text) => {
    expect(formatNumber(value, digits)).toBe(text);
  });

  it('keeps the width of a running value', () => {
    expect([8.2, 8.21, 8.999, 9].map((x) => formatNumber(x, 3, 'keep'))).toEqual(['8.20', '8.21', '9.00', '9.00']);
    expect(formatNumber(0, 3, 'keep')).toBe('0.00');
  });

  it('throws on what is no number', () => {
    expect(() => formatNumber(Number.NaN, 3)).toThrow(RangeError);
    expect(() => formatNumber(Number.POSITIVE_INFINITY, 3)).toThrow(RangeError);
  });

  it('is within half a unit of the last digit and holds no locale mark (seed 47)', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 1, max: 6 }), (x, digits) => {
        const text = formatNumber(x, digits);
        if (!/^−?\d+(\.\d+)?$/.test(text)) return false;
        const back = Number(text.replace('−', '-'));
        // The 20th decimal is the last that is written.
        return Math.abs(back - x) <= 0.5000001 * 10 ** (1 - digits) * Math.abs(x) + 1e-20;
      }),
      { seed: 47, numRuns: 1000 },
    );
  });

  it('rounds to digits, never coarser than a whole number', () => {
    expect(roundToDigits(1234.6, 3)).toBe(1235);
    expect(roundToDigits(0.12345, 3)).toBe(0.123);
  });
});
