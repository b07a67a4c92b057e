import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '../../../src/core/math/index.ts';

describe('findRoot', () => {
  it('finds √2 and the solution of cos x = x (0.7390851332151607, from memory)', () => {
    expect(Math.abs(findRoot((x) => x * x - 2, 1, 2, 1e-15).x - Math.SQRT2)).toBeLessThan(1e-15);
    expect(Math.abs(findRoot((x) => Math.cos(x) - x, 0, 1, 1e-15).x - 0.7390851332151607)).toBeLessThan(1e-15);
  });

  it('finds the root of any straight-and-cubic mixture (seed 41)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: 0.01, max: 50, noNaN: true }),
        (root, bend) => {
          const found = findRoot((x) => x - root + bend * (x - root) ** 3, -6, 6, 1e-13);
          expect(found.converged).toBe(true);
          expect(Math.abs(found.x - root)).toBeLessThan(1e-12);
        },
      ),
      { seed: 41 },
    );
  });

  it('is no slower than a few bisections where the function is flat and steep by turns', () => {
    const found = findRoot((x) => Math.sign(x - 0.3) * Math.abs(x - 0.3) ** 9, -1, 2, 1e-9);
    expect(found.converged).toBe(true);
    expect(Math.abs(found.x - 0.3)).toBeLessThan(1e-8);
  });

  it('says when it was not given enough steps', () => {
    expect(findRoot((x) => x ** 3 - 2, 0, 100, 1e-15, 3).converged).toBe(false);
  });

  it('refuses ends of equal sign', () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1, 1e-9)).toThrow(RangeError);
  });
});
