import { describe, expect, it } from 'vitest';
import { type FitParameter, leastSquares, randomStream } from '../../../src/core/math/index.ts';

const log = (start: number): FitParameter => ({ start, least: 1e-12, greatest: 1e12, scale: 'log' });
const linear = (start: number): FitParameter => ({ start, least: -1e9, greatest: 1e9, scale: 'linear' });

const fitCurve = (
  xs: readonly number[],
  ys: readonly number[],
  parameters: readonly FitParameter[],
  model: (x: number, b: Float64Array) => number,
) =>
  leastSquares({
    parameters,
    count: xs.length,
    residualsInto: (out, b) => {
      for (let i = 0; i < xs.length; i++) out[i] = model(xs[i]!, b) - ys[i]!;
    },
  });

const deviation = (fit: ReturnType<typeof leastSquares>, j: number): number =>
  Math.sqrt(fit.covariance![j * fit.values.length + j]!);

/** Relative gap; the certified figures have 11 digits, the search stops at 1e-8. */
const gap = (found: number, certified: number): number => Math.abs(found / certified - 1);

// National Institute of Standards and Technology, Statistical Reference Datasets, nonlinear regression; data from memory, which
// the certified sums of squares to 1e-9 confirm.
describe('leastSquares against certified values', () => {
  const misraX = [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760];
  const misraY = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78];
  it('Misra1a, lower difficulty, from its far start, with deviations', () => {
    const fit = fitCurve(misraX, misraY, [log(500), log(0.0001)], (x, b) => b[0]! * (1 - Math.exp(-b[1]! * x)));
    expect(fit.converged).toBe(true);
    expect(gap(fit.values[0]!, 238.94212918)).toBeLessThan(1e-8);
    expect(gap(fit.values[1]!, 5.5015643181e-4)).toBeLessThan(1e-8);
    expect(gap(fit.sumOfSquares, 0.12455138894)).toBeLessThan(1e-9);
    // Walked in ln p, so that the deviations are relative.
    expect(gap(deviation(fit, 0) * fit.values[0]!, 2.7070075241)).toBeLessThan(1e-6);
    expect(gap(deviation(fit, 1) * fit.values[1]!, 7.2668688436e-6)).toBeLessThan(1e-6);
    expect(fit.freedom).toBe(12);
  });

  it('Rat43, higher difficulty, four parameters, near start in plain coordinates', () => {
    const y = [
      16.08, 33.83, 65.8, 97.2, 191.55, 326.2, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56, 689.96, 637.56, 717.41,
    ];
    const x = y.map((_, i) => i + 1);
    const fit = fitCurve(
      x,
      y,
      [linear(700), linear(5), linear(0.75), linear(1.3)],
      (t, b) => b[0]! / (1 + Math.exp(b[1]! - b[2]! * t)) ** (1 / b[3]!),
    );
    expect(fit.converged).toBe(true);
    const certified = [699.6415127, 5.2771253025, 0.75962938329, 1.2792483859];
    const deviations = [16.302297817, 2.0828735829, 0.19566123451, 0.68761936385];
    certified.forEach((value, j) => {
      expect(gap(fit.values[j]!, value)).toBeLessThan(1e-6);
      expect(gap(deviation(fit, j), deviations[j]!)).toBeLessThan(1e-5);
    });
    expect(gap(fit.sumOfSquares, 8786.404908)).toBeLessThan(1e-9);
  });

  it('MGH09, higher difficulty, rational, from its far start', () => {
    const y = [0.1957, 0.1947, 0.1735, 0.16, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246];
    const x = [4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625];
    const fit = fitCurve(
      x,
      y,
      [log(0.25), log(0.39), log(0.415), log(0.39)],
      (t, b) => (b[0]! * (t * t + b[1]! * t)) / (t * t + b[2]! * t + b[3]!),
    );
    expect(fit.converged).toBe(true);
    [0.19280693458, 0.19128232873, 0.12305650693, 0.13606233068].forEach((value, j) => {
      expect(gap(fit.values[j]!, value)).toBeLessThan(1e-5);
    });
    expect(gap(fit.sumOfSquares, 3.0750560385e-4)).toBeLessThan(1e-8);
  });
});

describe('leastSquares', () => {
  it('is the solution of the normal equations where the model is a straight line', () => {
    const xs = [0, 1, 2, 3, 4, 5];
    const ys = [1.1, 2.8, 5.2, 7.1, 8.8, 11.2];
    const fit = fitCurve(xs, ys, [linear(0.5), linear(0.5)], (x, b) => b[0]! + b[1]! * x);
    // Slope Sxy/Sxx = 35.1/17.5, its deviation √(s²/Sxx); by hand.
    const slope = xs.reduce((s, x, i) => s + (x - 2.5) * ys[i]!, 0) / 17.5;
    expect(gap(fit.values[1]!, slope)).toBeLessThan(1e-10);
    expect(gap(deviation(fit, 1), Math.sqrt(fit.sumOfSquares / 4 / 17.5))).toBeLessThan(1e-8);
  });

  it('agrees with a search that knows no derivatives (noise of seed 5)', () => {
    const random = randomStream(5);
    const xs = Array.from({ length: 30 }, (_, i) => 0.2 * i);
    const ys = xs.map((x) => 3 * Math.exp(-0.7 * x) + 0.05 * random.normal());
    const model = (x: number, b: ArrayLike<number>): number => b[0]! * Math.exp(-b[1]! * x);
    const fit = fitCurve(xs, ys, [log(1), log(3)], model);
    const sum = (b: readonly number[]): number => xs.reduce((s, x, i) => s + (model(x, b) - ys[i]!) ** 2, 0);
    let best = [1, 1];
    for (let width = 1; width > 1e-9; ) {
      const around = [-1, 0, 1].flatMap((i) =>
        [-1, 0, 1].map((j) => [best[0]! * Math.exp(i * width), best[1]! * Math.exp(j * width)]),
      );
      const next = around.reduce((a, b) => (sum(b) < sum(a) ? b : a));
      if (next[0] === best[0] && next[1] === best[1]) width /= 2;
      best = next;
    }
    // A search on values alone places a minimum to the root of rounding.
    expect(gap(fit.values[0]!, best[0]!)).toBeLessThan(1e-6);
    expect(gap(fit.values[1]!, best[1]!)).toBeLessThan(1e-6);
  });

  it('rests on a bound, says so, and frees it again when the others have moved', () => {
    const task = (least: number) => ({
      parameters: [{ start: 2, least, greatest: 9, scale: 'log' as const }, linear(0.1)],
      count: 3,
      residualsInto: (out: Float64Array, [p, q]: Float64Array) => {
        out[0] = p! - 1;
        out[1] = 2 * (q! - 3);
        out[2] = p! - q! + 2;
      },
    });
    const bounded = leastSquares(task(1.5));
    expect(bounded.held).toEqual([true, false]);
    expect(bounded.values[0]).toBe(1.5);
    // With p fixed at 1.5: 4(q − 3) = 1.5 − q + 2.
    expect(bounded.values[1]).toBeCloseTo(3.1, 8);
    expect(bounded.converged).toBe(true);
    expect(bounded.covariance![0]).toBe(0);
    const open = leastSquares(task(0.1));
    expect(open.held).toEqual([false, false]);
    expect(open.sumOfSquares).toBeLessThan(1e-20);
  });

  it('takes the variance that it is told', () => {
    const fitWith = (variance: 'estimated' | 'known' | 'at-least-known', apart: number) =>
      leastSquares({
        parameters: [linear(1)],
        count: 2,
        residualsInto: (out, [p]) => {
          out[0] = p! - 3;
          out[1] = p! - 3 - apart;
        },
        variance,
      }).covariance![0]!;
    // The mean of two numbers: s²/2, s² their half squared distance.
    expect(fitWith('estimated', 0.2)).toBeCloseTo(0.01, 8);
    expect(fitWith('known', 0.2)).toBeCloseTo(0.5, 8);
    expect(fitWith('at-least-known', 0.2)).toBeCloseTo(0.5, 8);
    expect(fitWith('at-least-known', 4)).toBeCloseTo(4, 7);
  });

  it('says what it could not do', () => {
    const xs = [1, 2, 3, 4];
    const twins = fitCurve(xs, [2, 4, 6, 8], [log(1), log(1)], (x, b) => b[0]! * b[1]! * x);
    expect(twins.covariance).toBeNull();
    const hurried = leastSquares(
      {
        parameters: [linear(-1.2), linear(1)],
        count: 2,
        residualsInto: (out, [x, y]) => {
          out[0] = 10 * (y! - x! * x!);
          out[1] = 1 - x!;
        },
      },
      2,
    );
    expect(hurried.converged).toBe(false);
    expect(hurried.ended).toBe('too-many-steps');
    expect(() => leastSquares({ parameters: [log(0.5), log(1)], count: 1, residualsInto: () => {} })).toThrow(
      RangeError,
    );
    expect(() => leastSquares({ parameters: [{ ...log(0.5), least: 1 }], count: 1, residualsInto: () => {} })).toThrow(
      RangeError,
    );
  });

  it('turns back where the model has no value', () => {
    const fit = leastSquares({
      parameters: [linear(4)],
      count: 2,
      residualsInto: (out, [x]) => {
        out[0] = Math.sqrt(x!) - 0.01;
        out[1] = 0;
      },
    });
    expect(fit.values[0]).toBeCloseTo(1e-4, 9);
    expect(Number.isFinite(fit.sumOfSquares)).toBe(true);
  });

  it('states intervals that hold the truth in 95 of 100 (2000 seeds of a decay, 12 points)', () => {
    let inside = 0;
    for (let seed = 0; seed < 2000; seed++) {
      const random = randomStream(seed);
      const xs = Array.from({ length: 12 }, (_, i) => 0.3 * i);
      const ys = xs.map((x) => 3 * Math.exp(-0.7 * x) + 0.05 * random.normal());
      const fit = fitCurve(xs, ys, [log(1), log(1)], (x, b) => b[0]! * Math.exp(-b[1]! * x));
      // Student's 97.5 % point for 10 degrees of freedom is 2.228 (Abramowitz and Stegun, table 26.10).
      if (Math.abs(Math.log(fit.values[1]! / 0.7)) < 2.228 * deviation(fit, 1)) inside++;
    }
    // Binomial: 1900 ± 10; four deviations to each side.
    expect(inside).toBeGreaterThan(1860);
    expect(inside).toBeLessThan(1940);
  });
});
