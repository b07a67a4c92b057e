import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bandPassTransfer,
  cascadeOf,
  type FilterShape,
  firstOrderAllPass,
  firstOrderShelf,
  greatestGroupDelay,
  groupDelayOf,
  highPassPrototype,
  lowPassPrototype,
  movedTo,
  prototypePolynomial,
  respond,
  secondOrderAllPass,
  secondOrderLowPass,
  sumOf,
  type TransferFunction,
  unwrappedPhase,
} from '../../../../src/core/circuit/index.ts';

const coefficients = fc.array(fc.double({ min: 0.1, max: 3, noNaN: true }), { minLength: 1, maxLength: 4 });
const transfer: fc.Arbitrary<TransferFunction> = fc.record({ numerator: coefficients, denominator: coefficients });
const near = (a: { re: number; im: number }, b: { re: number; im: number }) =>
  Math.hypot(a.re - b.re, a.im - b.im) / (1 + Math.hypot(a.re, a.im));

describe('rational functions', () => {
  it('add, cascade and move as their responses do (seed 6)', () => {
    fc.assert(
      fc.property(transfer, transfer, fc.double({ min: 0.1, max: 10, noNaN: true }), (a, b, omega) => {
        const [x, y] = [respond(a, omega), respond(b, omega)];
        fc.pre(Math.hypot(x.re, x.im) < 1e3 && Math.hypot(y.re, y.im) < 1e3);
        expect(near(respond(sumOf(a, b, -2), omega), { re: x.re - 2 * y.re, im: x.im - 2 * y.im })).toBeLessThan(1e-9);
        const product = { re: x.re * y.re - x.im * y.im, im: x.re * y.im + x.im * y.re };
        expect(near(respond(cascadeOf(a, b), omega), product)).toBeLessThan(1e-9);
        expect(near(respond(movedTo(a, 7), 7 * omega), x)).toBeLessThan(1e-9);
      }),
      { seed: 6, numRuns: 300 },
    );
  });

  it('group delay is the negative slope of the phase (seed 8)', () => {
    fc.assert(
      fc.property(transfer, fc.double({ min: 0.2, max: 5, noNaN: true }), (a, omega) => {
        const at = respond(a, omega);
        fc.pre(Math.hypot(at.re, at.im) > 1e-2 && Math.hypot(at.re, at.im) < 1e2);
        const step = 1e-6;
        const [up, down] = [respond(a, omega + step), respond(a, omega - step)];
        const turn = Math.atan2(up.im * down.re - up.re * down.im, up.re * down.re + up.im * down.im);
        expect(Math.abs(groupDelayOf(a, omega) + turn / (2 * step))).toBeLessThan(1e-5 * (1 + Math.abs(turn / step)));
      }),
      { seed: 8, numRuns: 300 },
    );
  });

  it('a peak of the delay is placed to rounding, or at the end of the range', () => {
    const allPass = secondOrderAllPass(Math.SQRT1_2);
    const { omega, delay } = greatestGroupDelay(allPass, 0.01, 100);
    // τ = 2√2 (1 + x²) / (1 + x⁴) is greatest, 2 + √2, at x² = √2 - 1.
    expect(omega).toBeCloseTo(Math.sqrt(Math.SQRT2 - 1), 12);
    expect(delay).toBeCloseTo(2 + Math.SQRT2, 12);
    expect(greatestGroupDelay(firstOrderAllPass, 0.01, 100).omega).toBe(0.01);
    expect(greatestGroupDelay(allPass, 2, 100).omega).toBe(2);
  });
});

describe('unwrappedPhase', () => {
  it('falls without a jump over many turns and ends at -n π for an all-pass of order n', () => {
    let chain: TransferFunction = { numerator: [1], denominator: [1] };
    for (const q of [0.6, 2, 8]) chain = cascadeOf(chain, secondOrderAllPass(q));
    const omegas = Array.from({ length: 400 }, (_, i) => 0.02 * 2500 ** (i / 399));
    const phases = unwrappedPhase(chain, omegas);
    for (let i = 1; i < phases.length; i++) expect(phases[i]!).toBeLessThan(phases[i - 1]!);
    expect(phases[0]!).toBeCloseTo(0, 0);
    expect(phases.at(-1)!).toBeCloseTo(-6 * Math.PI, 0);
    // A coarse list gives the same values.
    expect(unwrappedPhase(chain, [omegas[300]!])[0]).toBeCloseTo(phases[300]!, 12);
  });

  it('begins at the sign of the gain, with a quarter turn for each zero or pole at s = 0', () => {
    expect(unwrappedPhase(highPassPrototype({ family: 'butterworth', order: 3 }), [1e-6])[0]).toBeCloseTo(
      1.5 * Math.PI,
      4,
    );
    expect(unwrappedPhase({ numerator: [-1], denominator: [1] }, [1])[0]).toBeCloseTo(Math.PI, 12);
    expect(unwrappedPhase({ numerator: [1], denominator: [0, 1] }, [1])[0]).toBeCloseTo(-Math.PI / 2, 12);
    expect(() => unwrappedPhase({ numerator: [0], denominator: [1, 1] }, [1])).toThrow(/no phase/);
    // A zero on the axis: the phase turns by +π there.
    const notch = unwrappedPhase({ numerator: [1, 0, 1], denominator: [1, 2, 1] }, [0.99, 1, 1.01]);
    expect(notch[2]! - notch[0]!).toBeCloseTo(Math.PI, 1);
    expect(Number.isFinite(notch[1]!)).toBe(true);
  });
});

describe('prototypes', () => {
  it('Bessel: flat delay of 1, 3 dB down at 1, or poles around 1, as normalised', () => {
    for (const order of [1, 2, 3, 4, 6]) {
      const bessel = (normalisation: 'delay' | 'phase' | '3dB'): FilterShape => ({
        family: 'bessel',
        order,
        normalisation,
      });
      const delay = lowPassPrototype(bessel('delay'));
      expect(groupDelayOf(delay, 0)).toBeCloseTo(1, 12);
      expect(groupDelayOf(delay, 0.1)).toBeCloseTo(1, order === 1 ? 1 : order === 2 ? 4 : 6);
      const { re, im } = respond(lowPassPrototype(bessel('3dB')), 1);
      expect(re * re + im * im).toBeCloseTo(0.5, 12);
      // With the phase normalisation low- and high-pass are mirror images: their phases differ by n π/2 at 1.
      expect(prototypePolynomial(bessel('phase')).at(-1)).toBe(1);
    }
    // W. E. Thomson's prototypes of unit delay are 3.01 dB down at 1.3617, 1.7557 and 2.1139 (from memory).
    for (const [order, corner] of [
      [2, 1.3617],
      [3, 1.7557],
      [4, 2.1139],
    ] as const) {
      const { re, im } = respond(lowPassPrototype({ family: 'bessel', order, normalisation: 'delay' }), corner);
      expect(10 * Math.log10(re * re + im * im)).toBeCloseTo(-3.0103, 3);
    }
  });

  it('Butterworth: |H|² = 1 / (1 + ω^2n), up to order 10', () => {
    for (let order = 1; order <= 10; order++) {
      for (const omega of [0.3, 0.9, 1, 1.7, 4]) {
        const { re, im } = respond(lowPassPrototype({ family: 'butterworth', order }), omega);
        expect((re * re + im * im) * (1 + omega ** (2 * order))).toBeCloseTo(1, 11);
      }
    }
  });

  it('shelf, low-pass and band-pass have the gains of their names', () => {
    expect(respond(firstOrderShelf(1, 4), 1e9).re).toBeCloseTo(4, 6);
    expect(respond(secondOrderLowPass(1.2), 1).im).toBeCloseTo(-1.2, 12);
    const band = bandPassTransfer({ family: 'butterworth', order: 1 }, 100, 400);
    expect(respond(band, 2 * Math.PI * 200).re).toBeCloseTo(1, 12);
  });
});
