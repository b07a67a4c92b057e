import { describe, expect, it } from 'vitest';
import { fitChebyshevInto, sumChebyshev } from '../../../src/core/math/index.ts';

describe('Chebyshev sums', () => {
  it('find the coefficients of exp on −1..1, the modified Bessel numbers I_j(1) (Abramowitz & Stegun, table 9.8)', () => {
    const c = new Float64Array(20);
    fitChebyshevInto(c, Math.exp, -1, 1);
    [1.2660658777520084, 2 * 0.5651591039924851, 2 * 0.13574766976703828].forEach((value, j) => {
      expect(Math.abs(c[j]! - value)).toBeLessThan(2e-15);
    });
  });

  it('reproduce smooth functions to rounding, from an offset too', () => {
    const c = new Float64Array(30);
    fitChebyshevInto(c.subarray(5), Math.sin, 3, 7);
    for (let t = -1; t <= 1; t += 0.05)
      expect(Math.abs(sumChebyshev(c, 5, 25, t) - Math.sin(5 + 2 * t))).toBeLessThan(1e-14);
  });
});
