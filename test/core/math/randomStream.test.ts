import { describe, expect, it } from 'vitest';
import { randomStream } from '../../../src/core/math/index.ts';

const draw = (count: number, next: () => number): number[] => Array.from({ length: count }, next);
const mean = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;

describe('randomStream', () => {
  it('repeats itself for a seed and differs between seeds', () => {
    expect(draw(20, randomStream(7).uniform)).toEqual(draw(20, randomStream(7).uniform));
    expect(draw(20, randomStream(7).uniform)).not.toEqual(draw(20, randomStream(8).uniform));
    expect(draw(20, randomStream(7).normal)).toEqual(draw(20, randomStream(7).normal));
  });

  it('spreads evenly: each tenth of 100 000 draws holds 10 000 within five standard deviations (seed 3)', () => {
    const bins = new Array<number>(10).fill(0);
    const xs = draw(100_000, randomStream(3).uniform);
    expect(xs.every((x) => x >= 0 && x < 1)).toBe(true);
    for (const x of xs) bins[Math.floor(x * 10)]! += 1;
    for (const bin of bins) expect(Math.abs(bin - 10_000)).toBeLessThan(5 * Math.sqrt(9000));
  });

  it('has no correlation from one draw to the next (seed 4)', () => {
    const xs = draw(100_000, randomStream(4).uniform);
    const products = xs.slice(1).map((x, i) => (x - 0.5) * (xs[i]! - 0.5));
    expect(Math.abs(mean(products))).toBeLessThan(5 / 12 / Math.sqrt(100_000));
  });

  it('draws normally: mean 0, variance 1, kurtosis 3, 68.27 % within one deviation (seed 5)', () => {
    const xs = draw(200_000, randomStream(5).normal);
    expect(Math.abs(mean(xs))).toBeLessThan(5 / Math.sqrt(200_000));
    expect(Math.abs(mean(xs.map((x) => x * x)) - 1)).toBeLessThan(5 * Math.sqrt(2 / 200_000));
    expect(Math.abs(mean(xs.map((x) => x ** 4)) - 3)).toBeLessThan(5 * Math.sqrt(96 / 200_000));
    expect(Math.abs(xs.filter((x) => Math.abs(x) < 1).length / 200_000 - 0.6827)).toBeLessThan(0.006);
  });
});
