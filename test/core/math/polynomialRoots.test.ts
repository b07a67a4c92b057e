import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { magnitude, polynomialRoots } from '../../../src/core/math/index.ts';

/** Coefficients, from the constant up, of the polynomial with the given real roots and conjugate pairs. */
const fromRoots = (real: readonly number[], pairs: readonly (readonly [number, number])[]): number[] => {
  let all = [1];
  const times = (factor: readonly number[]) => {
    const next = new Array<number>(all.length + factor.length - 1).fill(0);
    all.forEach((a, i) => {
      factor.forEach((b, k) => {
        next[i + k] = next[i + k]! + a * b;
      });
    });
    all = next;
  };
  for (const root of real) times([-root, 1]);
  for (const [re, im] of pairs) times([re * re + im * im, -2 * re, 1]);
  return all;
};

describe('polynomialRoots', () => {
  it('finds the roots of a polynomial of Wilkinson’s kind, 1 to 8', () => {
    const roots = polynomialRoots(fromRoots([1, 2, 3, 4, 5, 6, 7, 8], []));
    roots.forEach((root, i) => {
      expect(Math.abs(root.re - (i + 1))).toBeLessThan(1e-9);
      expect(root.im).toBe(0);
    });
  });

  it('finds the Butterworth poles of order 4 (S. Butterworth 1930: on the unit circle, 22.5 degrees apart from the half circle)', () => {
    const [a1, a2] = [Math.sqrt(4 + 2 * Math.SQRT2), 2 + Math.SQRT2];
    for (const pole of polynomialRoots([1, a1, a2, a1, 1])) {
      expect(Math.abs(magnitude(pole) - 1)).toBeLessThan(1e-13);
      const angle = (Math.abs(Math.atan2(pole.im, pole.re)) * 180) / Math.PI;
      expect(Math.min(Math.abs(angle - 112.5), Math.abs(angle - 157.5))).toBeLessThan(1e-11);
    }
  });

  it('puts every root of random polynomials back (seed 43)', () => {
    const number = fc.integer({ min: -30, max: 30 }).map((n) => n / 10);
    fc.assert(
      fc.property(
        fc.uniqueArray(number, { maxLength: 3 }),
        fc.array(fc.tuple(number, fc.integer({ min: 3, max: 30 })), { maxLength: 2 }),
        (real, raw) => {
          const pairs = raw.map(([re, im], i) => [re, im / 10 + i] as const);
          const coefficients = fromRoots(real, pairs);
          const roots = polynomialRoots(coefficients);
          expect(roots).toHaveLength(coefficients.length - 1);
          for (const wanted of [...real.map((re) => [re, 0] as const), ...pairs]) {
            const nearest = Math.min(...roots.map((root) => Math.hypot(root.re - wanted[0], root.im - wanted[1])));
            // Two pairs may nearly coincide: the square root of the rounding is then what is left.
            expect(nearest).toBeLessThan(2e-6);
          }
        },
      ),
      { seed: 43 },
    );
  });

  it('knows constants and refuses a vanishing leading coefficient', () => {
    expect(polynomialRoots([3])).toEqual([]);
    expect(polynomialRoots([0, 0, 2]).every((root) => magnitude(root) < 1e-7)).toBe(true);
    expect(() => polynomialRoots([1, 0])).toThrow(RangeError);
    expect(() => polynomialRoots([])).toThrow(RangeError);
  });
});
