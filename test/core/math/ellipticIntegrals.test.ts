import { describe, expect, it } from 'vitest';
import { ellipticIntegrals } from '../../../src/core/math/index.ts';

describe('ellipticIntegrals', () => {
  it('gives the printed values (Abramowitz & Stegun, table 17.1)', () => {
    const { k, e } = ellipticIntegrals(0.5);
    expect(Math.abs(k - 1.854074677301372)).toBeLessThan(1e-15);
    expect(Math.abs(e - 1.350643881047675)).toBeLessThan(1e-14);
    expect(Math.abs(ellipticIntegrals(0.1).k - 1.612441348720219)).toBeLessThan(1e-14);
  });

  it('obeys Legendre’s relation EK′ + E′K − KK′ = π/2', () => {
    for (const m of [0.01, 0.2, 0.5, 0.83, 0.999]) {
      const [a, b] = [ellipticIntegrals(m), ellipticIntegrals(1 - m)];
      expect(Math.abs(a.e * b.k + b.e * a.k - a.k * b.k - Math.PI / 2)).toBeLessThan(5e-14);
    }
  });

  it('agrees with the defining integrals, also for negative m', () => {
    // Periodic and smooth: the midpoint rule converges exponentially.
    const steps = 2000;
    for (const m of [-3, 0, 0.4, 0.95]) {
      let [k, e] = [0, 0];
      for (let i = 0; i < steps; i++) {
        const root = Math.sqrt(1 - m * Math.sin((Math.PI * (i + 0.5)) / (2 * steps)) ** 2);
        k += Math.PI / (2 * steps) / root;
        e += (Math.PI / (2 * steps)) * root;
      }
      expect(Math.abs(ellipticIntegrals(m).k / k - 1)).toBeLessThan(1e-13);
      expect(Math.abs(ellipticIntegrals(m).e / e - 1)).toBeLessThan(1e-13);
    }
  });

  it('refuses m = 1', () => {
    expect(() => ellipticIntegrals(1)).toThrow(RangeError);
  });
});
