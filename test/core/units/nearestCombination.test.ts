import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestCombination, nearestCombinations } from '../../../src/core/units/nearestCombination.ts';
import { nearestPreferred } from '../../../src/core/units/nearestPreferred.ts';
import { preferredBetween } from '../../../src/core/units/preferredBetween.ts';
import { preferredMantissas } from '../../../src/core/units/preferredSeries.ts';

const PAIRS = { pairs: true, addsIn: 'series', pieces: 'enough' } as const;
const anyTarget = fc.double({ min: -7, max: 4, noNaN: true }).map((power) => 10 ** power);

describe('preferredBetween', () => {
  it('is the series of the standard over its decades, ends counted', () => {
    expect(preferredBetween('E6', 1, 10)).toEqual([1, 1.5, 2.2, 3.3, 4.7, 6.8, 10]);
    expect(preferredBetween('E3', 2.2e-6, 4.7e-5)).toEqual([2.2e-6, 4.7e-6, 1e-5, 2.2e-5, 4.7e-5]);
    expect(preferredBetween('E96', 1, 99.99)).toHaveLength(192);
    expect(() => preferredBetween('E6', 0, 1)).toThrow(RangeError);
    expect(preferredMantissas('E6')).toHaveLength(6);
  });
});

describe('nearestCombination', () => {
  it('makes known values: 5 of two 10, 8.9 of 8.2 beside nothing and of 6.8 with 2.2 less well', () => {
    expect(nearestCombination(5, 'E12', PAIRS)).toMatchObject({
      how: 'parallel',
      values: [10, 10],
      value: 5,
      error: 0,
    });
    expect(nearestCombination(9, [6.8, 2.2, 8.2], PAIRS)).toMatchObject({ how: 'series', values: [6.8, 2.2] });
    expect(nearestCombination(8.4, [6.8, 2.2, 8.2], { ...PAIRS, pairs: false })).toMatchObject({
      how: 'single',
      values: [8.2],
    });
    expect(nearestCombination(9e-6, [6.8e-6, 2.2e-6], { ...PAIRS, addsIn: 'parallel' })?.how).toBe('parallel');
  });
  it('takes a single part where a pair is no nearer, and the nearest preferred value without pairs (seed 71)', () => {
    expect(nearestCombination(10, 'E12', PAIRS)).toMatchObject({ how: 'single', values: [10] });
    fc.assert(
      fc.property(anyTarget, fc.constantFrom('E6', 'E24', 'E96'), (target, series) => {
        const found = nearestCombination(target, series, { ...PAIRS, pairs: false })!;
        const nearest = nearestPreferred(target, series, 'log');
        // Half-way between two values rounding may choose either.
        expect(Math.abs(Math.log(found.value / target))).toBeCloseTo(Math.abs(Math.log(nearest / target)), 9);
      }),
      { seed: 71 },
    );
  });
  it('is as near as trying every pair, series and parallel, with one piece of each or enough of them (seed 72)', () => {
    const lists = fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 150, noNaN: true }), lists, fc.boolean(), (target, list, enough) => {
        const away = (value: number) => Math.abs(Math.log(value / target));
        const all = list.flatMap((a, i) => [
          away(a),
          ...list.flatMap((b, k) => (i === k && !enough ? [] : [away(a + b), away((a * b) / (a + b))])),
        ]);
        const found = nearestCombination(target, list, { ...PAIRS, pieces: enough ? 'enough' : 'one-each' })!;
        expect(away(found.value)).toBeCloseTo(Math.min(...all), 9);
        const [a, b] = found.values as [number, number];
        const made = found.how === 'single' ? a : found.how === 'series' ? a + b : (a * b) / (a + b);
        expect(found.value / made).toBeCloseTo(1, 12);
        expect(found.error).toBe(found.value / target - 1);
        expect(found.places.map((place) => list[place])).toEqual([...found.values]);
      }),
      { seed: 72, numRuns: 400 },
    );
  });
  it('is never worse with pairs, and of E24 pairs within 0.6 % of anything (seed 73)', () => {
    fc.assert(
      fc.property(anyTarget, (target) => {
        const alone = nearestCombination(target, 'E24', { ...PAIRS, pairs: false })!;
        const paired = nearestCombination(target, 'E24', PAIRS)!;
        expect(Math.abs(Math.log(1 + paired.error))).toBeLessThanOrEqual(Math.abs(Math.log(1 + alone.error)) + 1e-12);
        expect(Math.abs(paired.error)).toBeLessThan(0.006);
      }),
      { seed: 73 },
    );
  });
  it('gives several, best first and each once, and none from nothing', () => {
    const several = nearestCombinations(7, 'E12', PAIRS, 5);
    expect(several).toHaveLength(5);
    expect(new Set(several.map(({ how, values }) => `${how}${values}`)).size).toBe(5);
    const errors = several.map(({ error }) => Math.abs(Math.log(1 + error)));
    expect(errors).toEqual(errors.toSorted((a, b) => a - b));
    expect(nearestCombination(7, [], PAIRS)).toBeNull();
    expect(() => nearestCombination(0, 'E12', PAIRS)).toThrow(RangeError);
    expect(() => nearestCombination(1, [1, -2], PAIRS)).toThrow(RangeError);
  });
});
