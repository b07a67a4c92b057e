import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  complex,
  conjugate,
  divide,
  exponential,
  magnitude,
  multiply,
  phase,
  reciprocal,
  squareRoot,
  subtract,
} from '../../../src/core/math/index.ts';

const part = fc.double({ min: -1e3, max: 1e3, noNaN: true });
const number = fc.tuple(part, part).map(([re, im]) => complex(re, im));

describe('complex numbers', () => {
  it('follow the rules of the field (seed 44)', () => {
    fc.assert(
      fc.property(number, number, (a, b) => {
        fc.pre(magnitude(b) > 1e-6);
        const back = divide(multiply(a, b), b);
        expect(magnitude(subtract(back, a))).toBeLessThan(1e-11 * (1 + magnitude(a)));
        expect(magnitude(subtract(multiply(b, reciprocal(b)), complex(1)))).toBeLessThan(1e-14);
        expect(add(a, conjugate(a)).im).toBe(0);
      }),
      { seed: 44 },
    );
  });

  it('divide where a naive quotient would overflow', () => {
    expect(magnitude(subtract(divide(complex(1e300, 1e300), complex(1e300, 1e300)), complex(1)))).toBeLessThan(1e-15);
  });

  it('take the root with the real part not negative (seed 45)', () => {
    fc.assert(
      fc.property(number, (a) => {
        const root = squareRoot(a);
        expect(root.re).toBeGreaterThanOrEqual(0);
        expect(magnitude(subtract(multiply(root, root), a))).toBeLessThan(1e-12 * (1 + magnitude(a)));
      }),
      { seed: 45 },
    );
    expect(squareRoot(complex(-4))).toEqual({ re: 0, im: 2 });
  });

  it('exponentiate with exp(jπ) = −1', () => {
    const e = exponential(complex(0, Math.PI));
    expect(magnitude(add(e, complex(1)))).toBeLessThan(1e-15);
    expect(phase(exponential(complex(2, 0.5)))).toBeCloseTo(0.5, 15);
  });
});
