import { describe, expect, it } from 'vitest';
import { besselJ0, besselJ1, besselJ1Zero, besselSequence } from '../../../src/core/math/index.ts';

/** J_n(x) = (1/π) ∫0..π cos(nτ − x sin τ) dτ (DLMF 10.9.2): the trapezium rule converges exponentially. */
const besselByIntegral = (order: number, x: number): number => {
  const steps = 400;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const t = (Math.PI * (i + 0.5)) / steps;
    sum += Math.cos(order * t - x * Math.sin(t));
  }
  return sum / steps;
};

describe('besselJ0 and besselJ1', () => {
  it('give the printed values (Abramowitz & Stegun, table 9.1)', () => {
    const printed = [
      [0, 1, 0],
      [1, 0.7651976865579666, 0.44005058574493355],
      [2, 0.22389077914123567, 0.5767248077568734],
      [5, -0.17759677131433832, -0.3275791375914653],
      [10, -0.24593576445134835, 0.04347274616886149],
    ] as const;
    for (const [x, j0, j1] of printed) {
      expect(Math.abs(besselJ0(x) - j0)).toBeLessThan(2e-15);
      expect(Math.abs(besselJ1(x) - j1)).toBeLessThan(2e-15);
    }
  });

  it('agree with the integral form to 3e-15 across all three methods and their joints', () => {
    for (let x = 0; x < 120; x += 0.317) {
      expect(Math.abs(besselJ0(x) - besselByIntegral(0, x)), `J0(${x})`).toBeLessThan(3e-15);
      expect(Math.abs(besselJ1(x) - besselByIntegral(1, x)), `J1(${x})`).toBeLessThan(3e-15);
    }
    for (const joint of [4, 8, 20, 24]) {
      for (const x of [joint - 1e-9, joint, joint + 1e-9]) {
        expect(Math.abs(besselJ0(x) - besselByIntegral(0, x)), `J0(${x})`).toBeLessThan(3e-15);
        expect(Math.abs(besselJ1(x) - besselByIntegral(1, x)), `J1(${x})`).toBeLessThan(3e-15);
      }
    }
  });

  it('are even and odd', () => {
    for (const x of [0.3, 7, 31]) {
      expect(besselJ0(-x)).toBe(besselJ0(x));
      expect(besselJ1(-x)).toBe(-besselJ1(x));
    }
  });

  it('keep relative accuracy where J1 is small', () => {
    for (const x of [1e-3, 1e-6, 1e-12])
      expect(Math.abs(besselJ1(x) / (x / 2 - x ** 3 / 16 + x ** 5 / 384) - 1)).toBeLessThan(1e-15);
  });
});

describe('besselJ1Zero', () => {
  it('gives the printed zeros (Abramowitz & Stegun, table 9.5)', () => {
    const printed = [3.83170597, 7.01558667, 10.17346814, 13.32369194, 16.47063005];
    printed.forEach((zero, i) => {
      expect(Math.abs(besselJ1Zero(i + 1) - zero)).toBeLessThan(6e-9);
    });
  });

  it('leaves nothing of J1', () => {
    for (let n = 1; n <= 40; n++) expect(Math.abs(besselJ1(besselJ1Zero(n)))).toBeLessThan(5e-15);
  });

  it('refuses to count from 0', () => {
    expect(() => besselJ1Zero(0)).toThrow(RangeError);
  });
});

describe('besselSequence', () => {
  it('agrees with the integral form in every order that matters', () => {
    for (const x of [1e-9, 0.2, 3, 17, 40, 60]) {
      const all = besselSequence(x);
      for (let n = 0; n < Math.min(all.length, 60); n += 3) {
        expect(Math.abs(all[n]! - besselByIntegral(n, x)), `J${n}(${x})`).toBeLessThan(3e-15);
      }
    }
  });

  it('obeys J0² + 2 Σ Jn² = 1 (DLMF 10.23.3)', () => {
    for (const x of [0.5, 5, 25, 55]) {
      const [first = 0, ...others] = besselSequence(x);
      const sum = others.reduce((total, j) => total + 2 * j * j, first * first);
      expect(Math.abs(sum - 1)).toBeLessThan(1e-14);
    }
  });

  it('changes the sign of odd orders with that of x', () => {
    const [plus, minus] = [besselSequence(7), besselSequence(-7)];
    expect(minus[2]).toBe(plus[2]);
    expect(minus[3]).toBe(-plus[3]!);
  });

  it('refuses arguments beyond its reach', () => {
    expect(() => besselSequence(61)).toThrow(RangeError);
    expect(() => besselSequence(Number.NaN)).toThrow(RangeError);
  });
});
