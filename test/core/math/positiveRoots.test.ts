import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { positiveRoots, stationaryPoints } from '../../../src/core/math/index.ts';

const product = (one: readonly number[], other: readonly number[]): number[] => {
  const result = new Array<number>(one.length + other.length - 1).fill(0);
  one.forEach((a, i) => {
    other.forEach((b, k) => {
      result[i + k]! += a * b;
    });
  });
  return result;
};
const withRoots = (roots: readonly number[]): number[] => roots.reduce((all, r) => product(all, [-r, 1]), [1]);

describe('positiveRoots', () => {
  it('finds those between 0 and the end, and no others', () => {
    const found = positiveRoots(withRoots([-3, 0.5, 2, 7, 40]), 30);
    expect(found).toHaveLength(3);
    for (const [i, root] of [0.5, 2, 7].entries()) expect(Math.abs(found[i]! / root - 1)).toBeLessThan(1e-11);
    expect(positiveRoots([1, 0, 1], 100)).toEqual([]);
    expect(positiveRoots([5], 1)).toEqual([]);
    expect(positiveRoots([2, -3, 1, 0, 0], 10)).toEqual([1, 2]);
  });

  it('finds every root of a product of linear factors that lie 2 % apart or more, over twelve decades (seed 101)', () => {
    const exponents = fc.uniqueArray(fc.integer({ min: -300, max: 300 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(exponents, (steps) => {
        const roots = steps.map((step) => 10 ** (step / 50)).sort((a, b) => a - b);
        const found = positiveRoots(withRoots(roots), 1e7);
        expect(found).toHaveLength(roots.length);
        // Neighbours 4.7 % apart: the coefficients themselves carry the root to about 1e-16 times the condition, at most 1e7 for five of them.
        for (const [i, root] of roots.entries()) expect(Math.abs(found[i]! / root - 1)).toBeLessThan(1e-7);
      }),
      { seed: 101 },
    );
  });
});

describe('stationaryPoints', () => {
  it('finds top and bottom of a quotient known in closed form', () => {
    expect(stationaryPoints([0, 1], [1, 0, 1], 10)).toEqual([1]);
    // x²/(1 + x)³ has its top at 2; what it does at 0 lies on the edge.
    const [top, ...rest] = stationaryPoints([0, 0, 1], withRoots([-1, -1, -1]), 10);
    expect(top).toBeCloseTo(2, 11);
    expect(rest).toEqual([]);
    expect(stationaryPoints([3], [1], 10)).toEqual([]);
  });
});
