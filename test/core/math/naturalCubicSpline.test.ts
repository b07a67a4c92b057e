import { describe, expect, it } from 'vitest';
import { naturalCubicSpline } from '../../../src/core/math/index.ts';

describe('naturalCubicSpline', () => {
  it('solves the textbook case: three points of a tent give 0.6875 half-way down', () => {
    // Curvature −3 in the middle by hand: s(1.5) = 0.5 + 3/6 · 0.375 = 0.6875.
    const spline = naturalCubicSpline([0, 1, 2], [0, 1, 0]);
    expect(spline(0.5)).toBeCloseTo(0.6875, 14);
    expect(spline(1.5)).toBeCloseTo(0.6875, 14);
  });

  it('passes through its points, is straight beyond them and smooth across them', () => {
    const xs = [0, 0.7, 1.1, 2.4, 3];
    const ys = [1, -1, 0.5, 2, 0];
    const spline = naturalCubicSpline(xs, ys);
    xs.forEach((x, i) => {
      expect(spline(x)).toBeCloseTo(ys[i]!, 13);
    });
    const slope = (x: number) => (spline(x + 1e-5) - spline(x - 1e-5)) / 2e-5;
    for (const x of xs) expect(Math.abs(slope(x + 2e-5) - slope(x - 2e-5))).toBeLessThan(1e-2);
    expect(spline(5) - spline(4)).toBeCloseTo(spline(6) - spline(5), 12);
    expect(spline(-1) - spline(-2)).toBeCloseTo(spline(0) - spline(-1), 12);
  });

  it('reproduces straight lines exactly and sin x with fourth-order error', () => {
    const line = naturalCubicSpline([1, 2, 5], [3, 5, 11]);
    expect(line(3.3)).toBeCloseTo(7.6, 13);
    const worst = (steps: number) => {
      const xs = Array.from({ length: steps + 1 }, (_, i) => (Math.PI * i) / steps);
      const spline = naturalCubicSpline(xs, xs.map(Math.sin));
      let error = 0;
      for (let x = 0; x < Math.PI; x += 0.01) error = Math.max(error, Math.abs(spline(x) - Math.sin(x)));
      return error;
    };
    expect(worst(20) / worst(40)).toBeGreaterThan(14);
    expect(worst(40)).toBeLessThan(2e-7);
  });

  it('refuses a single point and falling x', () => {
    expect(() => naturalCubicSpline([1], [1])).toThrow(RangeError);
    expect(() => naturalCubicSpline([1, 1], [1, 2])).toThrow(RangeError);
    expect(() => naturalCubicSpline([1, 2], [1])).toThrow(RangeError);
  });
});
