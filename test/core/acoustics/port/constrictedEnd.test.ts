import { describe, expect, it } from 'vitest';
import { constrictedEndRadii, endClearance, portEndCorrectionsM } from '../../../../src/core/acoustics/index.ts';
import { besselJ0, besselJ1 } from '../../../../src/core/math/index.ts';

/** Zeros of J1 by Newton on its derivative J0 − J1/x. */
const zeroOfJ1 = (n: number): number => {
  let x = Math.PI * (n + 0.25);
  for (let step = 0; step < 30; step++) x -= besselJ1(x) / (besselJ0(x) - besselJ1(x) / x);
  return x;
};

/** A piston-like flow into a coaxial tube, in radii: Σ 4 J1²(xβ)/(x³ β J0²(x)), β = a/b (F. C. Karal 1953, from memory). */
const pistonInTube = (beta: number): number => {
  let sum = 0;
  for (let n = 1; n < 4000; n++) {
    const x = zeroOfJ1(n);
    sum += (4 * besselJ1(x * beta) ** 2) / (x ** 3 * beta * besselJ0(x) ** 2);
  }
  return sum;
};

describe('constrictedEndRadii', () => {
  it('lies 3 % and up to 0.03 radii below the series of a piston in a tube', () => {
    for (const beta of [0.1, 0.2, 0.4, 0.6]) {
      const series = pistonInTube(beta);
      const found = constrictedEndRadii(beta ** 2);
      expect(found).toBeLessThan(series);
      expect(series - found).toBeLessThan(0.035);
    }
  });

  it('is the flanged end in a wide box, falls without a break and ends at nothing', () => {
    expect(constrictedEndRadii(0)).toBe(0.82);
    expect(constrictedEndRadii(1)).toBe(0);
    for (let e = 0; e < 0.95; e += 0.05)
      expect(constrictedEndRadii(e + 0.05)).toBeLessThanOrEqual(constrictedEndRadii(e));
    expect(() => constrictedEndRadii(1.1)).toThrow(RangeError);
  });

  it('replaces the flush inner end where the box is stated, and no other', () => {
    const port = { shape: { kind: 'round', diameterM: 0.1 }, innerEnd: 'flanged', outerEnd: 'flanged' } as const;
    const boxed = portEndCorrectionsM({ ...port, chamberSectionM2: 0.0785 });
    expect(portEndCorrectionsM(port) - boxed).toBeCloseTo(
      (0.82167 - constrictedEndRadii(0.00785398 / 0.0785)) * 0.05,
      6,
    );
    const free = { ...port, innerEnd: 'free' } as const;
    expect(portEndCorrectionsM({ ...free, chamberSectionM2: 0.0785 })).toBe(portEndCorrectionsM(free));
  });

  it('leaves a gap round the mouth as wide as the bore: half a radius at least, two wished (common practice, no source)', () => {
    const { leastM, wishedM } = endClearance({ kind: 'round', diameterM: 0.1 });
    expect(2 * Math.PI * 0.05 * leastM).toBeCloseTo(Math.PI * 0.05 ** 2, 15);
    expect(wishedM).toBeCloseTo(0.1, 15);
  });
});
