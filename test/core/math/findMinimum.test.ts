import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findMinimum } from '../../../src/core/math/index.ts';

describe('findMinimum', () => {
  it('finds the least value of x ln x at 1/e', () => {
    const found = findMinimum((x) => x * Math.log(x), 0.01, 3, 1e-9);
    expect(found.converged).toBe(true);
    expect(Math.abs(found.x - 1 / Math.E)).toBeLessThan(2e-8);
    expect(Math.abs(found.value + 1 / Math.E)).toBeLessThan(1e-15);
  });

  it('places the minimum of a bent bowl anywhere, also at 0 (seed 42)', () => {
    fc.assert(
      fc.property(fc.double({ min: -4, max: 4, noNaN: true }), (centre) => {
        const found = findMinimum((x) => (x - centre) ** 2 + 0.1 * (x - centre) ** 4, -5, 5, 1e-8);
        expect(found.converged).toBe(true);
        expect(Math.abs(found.x - centre)).toBeLessThan(2e-7);
      }),
      { seed: 42 },
    );
  });

  it('goes to the end towards which the function falls, whichever way the ends are given', () => {
    expect(findMinimum((x) => x, 2, 5, 1e-8).x).toBeCloseTo(2, 5);
    expect(findMinimum((x) => -x, 5, 2, 1e-8).x).toBeCloseTo(5, 5);
  });

  it('says when it was not given enough steps', () => {
    expect(findMinimum((x) => Math.cos(x), 1, 6, 1e-8, 3).converged).toBe(false);
  });
});
