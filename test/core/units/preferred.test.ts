import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestPreferred } from '../../../src/core/units/nearestPreferred.ts';
import { preferredMantissas, type SeriesName } from '../../../src/core/units/preferredSeries.ts';
import { stepPreferred } from '../../../src/core/units/stepPreferred.ts';

const SERIES = ['E3', 'E6', 'E12', 'E24', 'E48', 'E96'] as const;
const anySeries = fc.constantFrom<SeriesName>(...SERIES);
const anyValue = fc.double({ min: -12, max: 8, noNaN: true }).map((power) => 10 ** power);

describe('preferredMantissas', () => {
  it('has the sizes of its names and ascends within a decade', () => {
    for (const name of SERIES) {
      const values = preferredMantissas(name);
      expect(values).toHaveLength(Number(name.slice(1)));
      expect(values).toEqual(values.toSorted((a, b) => a - b));
      expect(values.at(-1)! / values[0]!).toBeLessThan(10);
    }
  });
  it('differs from the rounded powers in eight values of E24, as tables of the series state', () => {
    const formula = Array.from({ length: 24 }, (_, i) => Math.round(10 * 10 ** (i / 24)));
    const different = preferredMantissas('E24').filter((value, i) => value !== formula[i]);
    expect(different).toEqual([27, 30, 33, 36, 39, 43, 47, 82]);
  });
  it('has each coarser series inside the finer one of its family', () => {
    for (const [coarse, fine] of [
      ['E3', 'E6'],
      ['E6', 'E12'],
      ['E12', 'E24'],
      ['E48', 'E96'],
    ] as const)
      expect(preferredMantissas(fine)).toEqual(expect.arrayContaining([...preferredMantissas(coarse)]));
  });
});

describe('nearestPreferred', () => {
  it('says which distance it means where they differ', () => {
    expect(nearestPreferred(3.97, 'E6', 'log')).toBe(4.7);
    expect(nearestPreferred(3.97, 'E6', 'linear')).toBe(3.3);
    expect(nearestPreferred(8.6, 'E6', 'log')).toBe(10);
  });
  it('is at least as near as any value of a plain list, by its own distance (seed 49)', () => {
    fc.assert(
      fc.property(anyValue, anySeries, fc.constantFrom<'log' | 'linear'>('log', 'linear'), (value, name, distance) => {
        const away = (x: number) => (distance === 'log' ? Math.abs(Math.log(x / value)) : Math.abs(x - value));
        const found = away(nearestPreferred(value, name, distance));
        const span = preferredMantissas(name)[0]!;
        const decade = 10 ** Math.floor(Math.log10(value));
        return [0.1, 1, 10].every((shift) =>
          preferredMantissas(name).every(
            (m) => found <= away((m / span) * decade * shift) * (1 + 1e-9) + 1e-12 * value,
          ),
        );
      }),
      { seed: 49 },
    );
  });
  it('throws without a value above 0', () => {
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => nearestPreferred(bad, 'E12', 'log')).toThrow(RangeError);
  });
});

describe('stepPreferred', () => {
  it('goes to the next value, across decades and from between two values', () => {
    expect(stepPreferred(6.8e-6, 'E12', 1)).toBe(8.2e-6);
    expect(stepPreferred(7e-6, 'E12', 1)).toBe(8.2e-6);
    expect(stepPreferred(7e-6, 'E12', -1)).toBe(6.8e-6);
    expect(stepPreferred(8.2, 'E12', 1)).toBe(10);
    expect(stepPreferred(10, 'E12', -1)).toBe(8.2);
    expect(stepPreferred(1e-6, 'E96', -1)).toBe(9.76e-7);
    // A value off by rounding alone is on the series.
    expect(stepPreferred(8.2 * (1 + 1e-12), 'E12', -1)).toBe(6.8);
    expect(nearestPreferred(8.2 * (1 + 1e-12), 'E12', 'log')).toBe(8.2);
  });
  it('comes back after one step there and one back, and n steps make a decade (seed 50)', () => {
    fc.assert(
      fc.property(anyValue, anySeries, (value, name) => {
        const start = nearestPreferred(value, name, 'log');
        if (stepPreferred(stepPreferred(start, name, 1), name, -1) !== start) return false;
        let x = start;
        for (let i = 0; i < preferredMantissas(name).length; i++) x = stepPreferred(x, name, 1);
        return Math.abs(x / start / 10 - 1) < 1e-12;
      }),
      { seed: 50 },
    );
  });
});
