import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, divide, exponential, magnitude, scale, subtract } from '../../../src/core/math/complex.ts';
import { hyperbolicCosine, hyperbolicSine, hyperbolicTangent } from '../../../src/core/math/hyperbolic.ts';

describe('hyperbolic functions of a complex number', () => {
  it('are sums of exponentials (seed 61)', () => {
    const part = fc.double({ min: -8, max: 8, noNaN: true });
    fc.assert(
      fc.property(part, part, (re, im) => {
        const [grown, decayed] = [exponential({ re, im }), exponential({ re: -re, im: -im })];
        const cosine = scale(add(grown, decayed), 0.5);
        const sine = scale(subtract(grown, decayed), 0.5);
        const size = magnitude(grown) + magnitude(decayed);
        expect(magnitude(subtract(hyperbolicCosine({ re, im }), cosine))).toBeLessThan(1e-14 * size);
        expect(magnitude(subtract(hyperbolicSine({ re, im }), sine))).toBeLessThan(1e-14 * size);
        fc.pre(magnitude(cosine) > 1e-3);
        const tangent = divide(sine, cosine);
        const error = magnitude(subtract(hyperbolicTangent({ re, im }), tangent));
        expect(error).toBeLessThan((1e-13 * size) / magnitude(cosine));
      }),
      { seed: 61 },
    );
  });

  it('keep their digits near 0 and their sense far out', () => {
    // tanh z = z − z³/3: at z = 1e-5 (1 + j) the second term is −2j/3 e-15 (1 + j) j ... = 1e-15 (2/3)(1 − j).
    const near = hyperbolicTangent({ re: 1e-5, im: 1e-5 });
    expect(Math.abs(near.re - (1e-5 + (2 / 3) * 1e-15))).toBeLessThan(2e-21);
    expect(Math.abs(near.im - (1e-5 - (2 / 3) * 1e-15))).toBeLessThan(2e-21);
    expect(hyperbolicTangent({ re: 5000, im: 1 })).toEqual({ re: 1, im: 0 });
    expect(hyperbolicTangent({ re: -5000, im: 1 })).toEqual({ re: -1, im: 0 });
    expect(hyperbolicTangent({ re: 0, im: 1 }).im).toBeCloseTo(Math.tan(1), 14);
  });
});
