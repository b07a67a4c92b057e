import { describe, expect, it } from 'vitest';
import { CLAIMS, figure } from './figure.ts';
import { median, quantile } from './statistics.ts';

describe('a figure', () => {
  it('holds when it meets its target, on the better side', () => {
    expect(figure('sweep-vs-ngspice-all', 200)).toMatchObject({ target: 200, better: 'higher', holds: true });
    expect(figure('sweep-vs-ngspice-all', 199).holds).toBe(false);
    expect(figure('paint-p95-ms', 33).holds).toBe(true);
    expect(figure('paint-p95-ms', 33.1)).toMatchObject({ target: 33, better: 'lower', holds: false });
  });
  it('holds where there is no target', () => {
    expect(figure('evaluation-p95-ms', 1000)).toMatchObject({ target: null, holds: true });
  });
  it('that is no number was not measured and does not hold', () => {
    for (const value of [null, Number.NaN, Number.POSITIVE_INFINITY])
      expect(figure('sweep-vs-mathjs', value)).toMatchObject({ value: null, holds: false });
  });
  it('has an id of its own that is stated', () => {
    expect(new Set(CLAIMS.map(({ id }) => id)).size).toBe(CLAIMS.length);
    expect(() => figure('speed-of-light', 1)).toThrow('states no figure');
  });
});

it('median and quantiles lie between the two nearest values', () => {
  expect(median([3, 1, 2])).toBe(2);
  expect(median([4, 1, 2, 3])).toBe(2.5);
  expect(quantile([0, 10, 20], 0.95)).toBeCloseTo(19, 12);
  expect(() => median([])).toThrow('no quantiles');
});
