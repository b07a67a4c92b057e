import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fourierInPlace } from '../../../src/core/measured/fourier.ts';
import {
  cepstrumResponse,
  minimumPhaseCepstrum,
  minimumPhaseTaps,
} from '../../../src/core/measured/minimumPhaseTaps.ts';

describe('fourierInPlace', () => {
  it('agrees with the sum it stands for', () => {
    const n = 16;
    const re = Float64Array.from({ length: n }, (_, i) => Math.sin(3 * i) + i / 7);
    const im = Float64Array.from({ length: n }, (_, i) => Math.cos(i * i));
    const [a, b] = [re.slice(), im.slice()];
    fourierInPlace(a, b);
    for (let k = 0; k < n; k++) {
      let [sumRe, sumIm] = [0, 0];
      for (let i = 0; i < n; i++) {
        const angle = (-2 * Math.PI * k * i) / n;
        sumRe += re[i]! * Math.cos(angle) - im[i]! * Math.sin(angle);
        sumIm += re[i]! * Math.sin(angle) + im[i]! * Math.cos(angle);
      }
      expect(a[k]).toBeCloseTo(sumRe, 12);
      expect(b[k]).toBeCloseTo(sumIm, 12);
    }
  });
  it('keeps the power and is undone by itself with the arrays swapped (seed 56)', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 64, maxLength: 64 }), (values) => {
        const re = Float64Array.from(values);
        const im = new Float64Array(64);
        const power = re.reduce((s, x) => s + x * x, 0);
        fourierInPlace(re, im);
        const spectral = re.reduce((s, x, i) => s + x * x + im[i]! ** 2, 0) / 64;
        fourierInPlace(im, re);
        return (
          Math.abs(spectral - power) < 1e-12 * (1 + power) && values.every((x, i) => Math.abs(re[i]! / 64 - x) < 1e-14)
        );
      }),
      { seed: 56 },
    );
  });
  it('throws on a length that is no power of two', () => {
    expect(() => fourierInPlace(new Float64Array(6), new Float64Array(6))).toThrow(RangeError);
  });
});

describe('minimumPhaseTaps', () => {
  it('reflects the outer zero of 1, -2.5, 1', () => {
    // Zeros 2 and 0.5; 2(1 - 0.5 z⁻¹)². Source: Oppenheim and Schafer, Discrete-Time Signal Processing.
    const taps = minimumPhaseTaps([1, -2.5, 1], 1024);
    for (const [i, tap] of [2, -2, 0.5].entries()) expect(taps[i]).toBeCloseTo(tap, 9);
  });
  it('gives a minimum-phase filter back and does not tell it from its time reversal (seed 57)', () => {
    const zero = fc.double({ min: -0.85, max: 0.85, noNaN: true });
    fc.assert(
      fc.property(zero, zero, (a, b) => {
        const taps = [1, -(a + b), a * b];
        const [own, reversed] = [minimumPhaseTaps(taps, 512), minimumPhaseTaps(taps.toReversed(), 512)];
        return taps.every((tap, i) => Math.abs(own[i]! - tap) < 1e-8 && Math.abs(reversed[i]! - tap) < 1e-8);
      }),
      { seed: 57 },
    );
  });
  it('has the cepstrum and the response of one zero', () => {
    const cepstrum = minimumPhaseCepstrum([1, -0.6], 1024);
    for (const n of [1, 2, 3, 4]) expect(cepstrum[n]).toBeCloseTo(-(0.6 ** n) / n, 13);
    const { magnitude, phaseRad } = cepstrumResponse(cepstrum, 1);
    expect(magnitude).toBeCloseTo(Math.hypot(1 - 0.6 * Math.cos(1), 0.6 * Math.sin(1)), 12);
    expect(phaseRad).toBeCloseTo(Math.atan2(0.6 * Math.sin(1), 1 - 0.6 * Math.cos(1)), 12);
  });
  it('meets a perfect null and refuses silence', () => {
    expect(minimumPhaseTaps([1, -1], 4096).every(Number.isFinite)).toBe(true);
    expect(() => minimumPhaseTaps([0, 0], 64)).toThrow(RangeError);
  });
});
