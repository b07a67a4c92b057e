import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { legendreChi } from '../../../src/core/measured/legendreChi.ts';
import { logCosineRipple } from '../../../src/core/measured/logCosineRipple.ts';
import { minimumPhase } from '../../../src/core/measured/minimumPhase.ts';
import { constantSlopePhaseRad, semiInfiniteSlopePhaseRad } from '../../../src/core/measured/slopePhase.ts';

const DEG = 180 / Math.PI;
const logGrid = (fromHz: number, toHz: number, perOctave: number): number[] =>
  Array.from(
    { length: Math.floor(perOctave * Math.log2(toHz / fromHz) + 1e-9) + 1 },
    (_, i) => fromHz * 2 ** (i / perOctave),
  );
const greatest = (values: Iterable<number>): number => Math.max(...[...values].map(Math.abs));

/** ln magnitude and unwrapped phase of second-order sections, written out from their formula. */
const section = (f: number, f0: number, q: number, highPass: boolean) => {
  const x = f / f0;
  return {
    ln: -0.5 * Math.log((1 - x * x) ** 2 + (x / q) ** 2) + (highPass ? 2 * Math.log(x) : 0),
    phase: -Math.atan2(x / q, 1 - x * x) + (highPass ? Math.PI : 0),
  };
};
const bandPass = (f: number) => {
  const parts = [
    section(f, 50, 0.5411961, true),
    section(f, 50, 1.306563, true),
    section(f, 12000, Math.SQRT1_2, false),
  ];
  return { ln: parts.reduce((s, p) => s + p.ln, 0), phase: parts.reduce((s, p) => s + p.phase, 0) };
};

describe('legendreChi', () => {
  it('has its known values', () => {
    // L. Lewin, Polylogarithms (1981), from memory: chi2(1) = π²/8, chi2(√2-1) = π²/16 - ln²(√2+1)/4.
    expect(legendreChi(0)).toBeCloseTo(Math.PI ** 2 / 8, 15);
    expect(legendreChi(Math.log(Math.SQRT2 + 1))).toBeCloseTo(
      Math.PI ** 2 / 16 - Math.log(Math.SQRT2 + 1) ** 2 / 4,
      15,
    );
  });
  it('is the integral of artanh(t)/t, by midpoints', () => {
    for (const x of [0.2, 0.41, 0.42, 0.7, 0.95]) {
      const n = 20000;
      let sum = 0;
      for (let i = 0; i < n; i++) {
        const t = (x * (i + 0.5)) / n;
        sum += (Math.atanh(t) / t) * (x / n);
      }
      // Midpoint rule: error of order (x/n)² times the second derivative.
      expect(Math.abs(legendreChi(-Math.log(x)) - sum)).toBeLessThan(1e-8);
    }
  });
  it('is smooth over the change of series', () => {
    const u = Math.log(Math.SQRT2 + 1);
    expect(Math.abs(legendreChi(u - 1e-9) - legendreChi(u + 1e-9))).toBeLessThan(2e-9);
  });
});

describe('minimumPhase', () => {
  it('is 90 degrees for 6.02 dB to the octave, whatever the points', () => {
    for (const slope of [1, 2, -3, 0.5]) {
      const f = [20, 33, 700, 20000];
      const phases = minimumPhase(
        f,
        f.map((x) => slope * Math.log(x)),
        { low: slope, high: slope },
        [1, 20, 500, 1e5],
      );
      expect(greatest(phases.map((p) => p - constantSlopePhaseRad(20 * Math.log10(2) * slope)))).toBeLessThan(1e-13);
    }
  });

  it('gives the tabulated phase of a semi-infinite slope', () => {
    const x = [0.05, 0.1, 0.2, 0.5, 0.8, 1, 1.25, 4];
    const phases = minimumPhase([0.01, 1], [0, 0], { low: 0, high: 1 }, x);
    // Bell Laboratories tables (1947), recomputed from the series: 1.8243, 3.6516, 7.328, 18.7969, 31.9996, 45 degrees.
    for (const [i, deg] of [1.8243, 3.6516, 7.328, 18.7969, 31.9996, 45].entries())
      expect(phases[i]! * DEG).toBeCloseTo(deg, 3);
    for (const [i, ratio] of x.entries()) expect(phases[i]).toBeCloseTo(semiInfiniteSlopePhaseRad(1, ratio), 13);
  });

  it('agrees with the integral over ln coth by quadrature on a polygon', () => {
    const f = [30, 100, 250, 1000, 6000];
    const ln = [-1, 0.5, 0.2, 0.9, -0.3];
    const slopes = { low: 1.5, high: -2 };
    const slopeAt = (x: number): number => {
      const i = f.findIndex((edge) => x < Math.log(edge));
      if (i === 0) return slopes.low;
      if (i < 0) return slopes.high;
      return (ln[i]! - ln[i - 1]!) / (Math.log(f[i]!) - Math.log(f[i - 1]!));
    };
    for (const at of [10, 100, 180, 1000, 9000]) {
      // u = ±t³ takes the logarithmic pole away; midpoints.
      const n = 200_000;
      const reach = 3.4;
      let sum = 0;
      for (let i = 0; i < n; i++) {
        const t = (reach * (i + 0.5)) / n;
        const u = t ** 3;
        const weight = -Math.log(Math.tanh(u / 2)) * 3 * t * t * (reach / n);
        sum += weight * (slopeAt(Math.log(at) + u) + slopeAt(Math.log(at) - u));
      }
      // Jumps of the slope fall between midpoints: error of one step, 3.4/n times the weight there.
      expect(minimumPhase(f, ln, slopes, [at])[0]).toBeCloseTo(sum / Math.PI, 4);
    }
  });

  it.each([
    [6, 0.33],
    [12, 0.08],
    [24, 0.07],
  ])('errs on a band-pass at %d points to the octave by at most %d degrees', (perOctave, degrees) => {
    const f = logGrid(5, 40000, perOctave);
    const wanted = f.map(bandPass);
    const phases = minimumPhase(
      f,
      wanted.map((w) => w.ln),
      { low: 4, high: -2 },
    );
    const errors = f.flatMap((x, i) => (x < 10 || x > 20000 ? [] : [(phases[i]! - wanted[i]!.phase) * DEG]));
    expect(greatest(errors)).toBeLessThan(degrees);
    // Without the slopes beyond the ends it is wrong by tens of degrees: the tails matter.
    const cut = minimumPhase(
      f,
      wanted.map((w) => w.ln),
      { low: 0, high: 0 },
    );
    expect(
      greatest(f.flatMap((x, i) => (x < 20 || x > 10000 ? [] : [(cut[i]! - wanted[i]!.phase) * DEG]))),
    ).toBeGreaterThan(15);
  });

  it('gives the closed phase of shelves and of a second-order low-pass within the error of the polygon', () => {
    const f = logGrid(1e-3, 1e3, 96);
    const shelf = (w: number) => ({
      ln: 0.5 * Math.log((1 + w * w) / (1 + (w / 4) ** 2)),
      phase: Math.atan(w) - Math.atan(w / 4),
    });
    const lowPass = (w: number) => section(w, 1, 1.2, false);
    for (const [system, high] of [
      [shelf, 0],
      [lowPass, -2],
    ] as const) {
      const phases = minimumPhase(
        f,
        f.map((w) => system(w).ln),
        { low: 0, high },
        [0.3, 1, 2, 5],
      );
      for (const [i, w] of [0.3, 1, 2, 5].entries())
        expect(Math.abs(phases[i]! - system(w).phase) * DEG).toBeLessThan(0.01);
    }
  });

  it('gives the exact phase of a ripple that is even in octaves', () => {
    const f = logGrid(1e-6, 1e6, 96);
    const ln = f.map((w) => logCosineRipple(0.5, 1.3, Math.log(w)).lnMagnitude);
    for (const u of [-1, 0, 0.4, 1.2])
      expect(
        Math.abs(minimumPhase(f, ln, { low: 0, high: 0 }, [Math.exp(u)])[0]! - logCosineRipple(0.5, 1.3, u).phaseRad),
      ).toBeLessThan(2e-5);
  });

  const curve = fc.array(
    fc.tuple(fc.double({ min: 0.05, max: 1, noNaN: true }), fc.double({ min: -3, max: 3, noNaN: true })),
    {
      minLength: 2,
      maxLength: 30,
    },
  );
  const slope = fc.double({ min: -4, max: 4, noNaN: true });
  const listed = (steps: readonly (readonly [number, number])[]) => {
    let x = 3;
    const f = steps.map(([step]) => {
      x += step;
      return Math.exp(x);
    });
    return { f, ln: steps.map(([, y]) => y) };
  };

  it('does not care for level, turns round with the frequency axis and adds up (seed 51)', () => {
    fc.assert(
      fc.property(curve, slope, slope, (steps, low, high) => {
        const { f, ln } = listed(steps);
        const phases = minimumPhase(f, ln, { low, high });
        const raised = minimumPhase(
          f,
          ln.map((y) => y + 2.5),
          { low, high },
        );
        const turned = minimumPhase(f.map((x) => 1 / x).toReversed(), ln.toReversed(), { low: -high, high: -low });
        const doubled = minimumPhase(
          f,
          ln.map((y) => 2 * y),
          { low: 2 * low, high: 2 * high },
        );
        const size = 1 + greatest(phases);
        return phases.every(
          (p, i) =>
            Math.abs(raised[i]! - p) < 1e-11 * size &&
            Math.abs(turned[phases.length - 1 - i]! + p) < 1e-11 * size &&
            Math.abs(doubled[i]! - 2 * p) < 1e-11 * size,
        );
      }),
      { seed: 51 },
    );
  });

  it('throws on lists that are no curve', () => {
    expect(() => minimumPhase([1], [1], { low: 0, high: 0 })).toThrow(RangeError);
    expect(() => minimumPhase([1, 2], [1], { low: 0, high: 0 })).toThrow(RangeError);
  });
});
