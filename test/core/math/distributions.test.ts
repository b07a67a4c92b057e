import { describe, expect, it } from 'vitest';
import {
  chiSquareTail,
  choleskyFactor,
  choleskyInverse,
  likelihoodRatio,
  logGamma,
  randomStream,
  residualStatistics,
  schwarzCriterion,
  schwarzWeights,
  studentQuantile,
  studentTails,
} from '../../../src/core/math/index.ts';

describe('logGamma', () => {
  it('gives factorials and √π', () => {
    let factorial = 1;
    for (let n = 1; n < 25; n++) {
      expect(Math.abs(logGamma(n) - Math.log(factorial))).toBeLessThan(1e-13 * Math.max(1, Math.log(factorial)));
      factorial *= n;
    }
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
    expect(logGamma(0.2) + logGamma(0.8)).toBeCloseTo(Math.log(Math.PI / Math.sin(0.2 * Math.PI)), 12);
    expect(() => logGamma(0)).toThrow(RangeError);
  });
});

describe('studentQuantile', () => {
  it('gives the tabulated 95 % points', () => {
    // M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, table 26.10.
    const table: [number, number][] = [
      [1, 12.706],
      [2, 4.303],
      [5, 2.571],
      [10, 2.228],
      [30, 2.042],
      [120, 1.98],
    ];
    for (const [freedom, t] of table) expect(Math.abs(studentQuantile(0.95, freedom) - t)).toBeLessThan(6e-4);
    expect(studentQuantile(0.95, 1e5)).toBeCloseTo(1.95996, 4);
  });
  it('has closed forms for one and two degrees of freedom', () => {
    for (const t of [0.1, 1, 3, 30]) {
      expect(studentTails(t, 1)).toBeCloseTo(1 - (2 * Math.atan(t)) / Math.PI, 12);
      expect(studentTails(t, 2)).toBeCloseTo(1 - t / Math.sqrt(2 + t * t), 12);
    }
    expect(studentQuantile(0.5, 1)).toBeCloseTo(1, 10);
  });
  it('refuses what is no confidence', () => {
    expect(() => studentQuantile(1, 5)).toThrow(RangeError);
    expect(() => studentQuantile(0.9, 0)).toThrow(RangeError);
  });
});

describe('chiSquareTail', () => {
  it('gives the tabulated 5 % points and closed forms', () => {
    // Abramowitz and Stegun, table 26.8.
    for (const [freedom, value] of [
      [1, 3.84146],
      [2, 5.99146],
      [10, 18.307],
      [30, 43.7729],
    ] as const)
      expect(chiSquareTail(value, freedom)).toBeCloseTo(0.05, 5);
    for (const x of [0, 0.3, 2, 9, 60]) {
      expect(chiSquareTail(x, 2)).toBeCloseTo(Math.exp(-x / 2), 13);
      const four = Math.exp(-x / 2) * (1 + x / 2);
      expect(Math.abs(chiSquareTail(x, 4) / four - 1)).toBeLessThan(1e-11);
    }
  });
  it('counts what seeded noise does (seed 9)', () => {
    const random = randomStream(9);
    let beyond = 0;
    for (let k = 0; k < 20000; k++) {
      let sum = 0;
      for (let i = 0; i < 5; i++) sum += random.normal() ** 2;
      if (sum > 9.236) beyond++;
    }
    // 10 % of 20 000 with four deviations of 42.
    expect(Math.abs(beyond - 20000 * chiSquareTail(9.236, 5))).toBeLessThan(170);
  });
});

describe('schwarzCriterion and likelihoodRatio', () => {
  it('follow from one another for nested models', () => {
    const [n, a, b] = [62, 0.0121, 0.0089];
    const { statistic } = likelihoodRatio(n, a, b, { from: 5, to: 6 });
    expect(schwarzCriterion(n, a, 5) - schwarzCriterion(n, b, 6)).toBeCloseTo(statistic - Math.log(n), 10);
    expect(likelihoodRatio(n, a, a, { from: 5, to: 6 }).probability).toBe(1);
  });
  it('gives weights that add up to 1 and favour the least', () => {
    const { differences, weights } = schwarzWeights([10, 4, 6]);
    expect(differences).toEqual([6, 0, 2]);
    expect(weights.reduce((x, y) => x + y, 0)).toBeCloseTo(1, 14);
    expect(weights[2]! / weights[1]!).toBeCloseTo(Math.exp(-1), 14);
  });
});

describe('residualStatistics', () => {
  it('tells noise from a drift (seed 3)', () => {
    const random = randomStream(3);
    const noise = Array.from({ length: 400 }, () => random.normal());
    const drift = noise.map((r, i) => r + 2 * Math.sin(i / 40));
    expect(Math.abs(residualStatistics(noise).correlationScore)).toBeLessThan(3);
    expect(residualStatistics(drift).correlationScore).toBeGreaterThan(8);
    expect(residualStatistics(noise).rms).toBeCloseTo(1, 0);
    expect(residualStatistics([0.1, -4, 2])).toMatchObject({ greatest: -4, greatestAt: 1 });
  });
});

describe('choleskyFactor', () => {
  it('inverts, and refuses columns that depend on one another', () => {
    const matrix = new Float64Array([4, 2, 1, 2, 5, 3, 1, 3, 6]);
    const inverse = choleskyInverse(choleskyFactor(matrix, 3, 1e-14)!, 3);
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) {
        let sum = 0;
        for (let k = 0; k < 3; k++) sum += matrix[i * 3 + k]! * inverse[k * 3 + j]!;
        expect(sum).toBeCloseTo(i === j ? 1 : 0, 13);
      }
    expect(choleskyFactor(new Float64Array([1, 2, 2, 4]), 2, 1e-13)).toBeNull();
  });
});
