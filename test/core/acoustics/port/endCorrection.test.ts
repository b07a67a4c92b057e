import { describe, expect, it } from 'vitest';
import {
  endCorrectionM,
  meanInverseDistancePerM,
  neighbourExtensionM,
  rectangularEndCorrectionM,
  rectangularEndFactors,
} from '../../../../src/core/acoustics/index.ts';
import { besselJ0, besselJ1, gaussLegendre } from '../../../../src/core/math/index.ts';

describe('rectangularEndCorrectionM', () => {
  it('gives 22.5 mm for a flush slot of 20 × 200 mm and 36.5 mm for its double on a wall (physics notes, 4.2)', () => {
    expect(Math.abs(rectangularEndCorrectionM(0.02, 0.2) - 0.0225)).toBeLessThan(5e-5);
    expect(Math.abs(rectangularEndCorrectionM(0.04, 0.2) - 0.0365)).toBeLessThan(5e-5);
  });

  it('agrees with a fourfold quadrature of 1/R, mapped so that the pole drops out', () => {
    const { nodes, weights } = gaussLegendre(40);
    for (const [a, b] of [
      [1, 1],
      [1, 5],
      [0.3, 0.7],
    ] as const) {
      // Mean over pairs = 4/(ab)² ∫∫ (a − u)(b − v)/√(u² + v²) du dv; u = a s, v = b s t and the other way round.
      let sum = 0;
      for (let i = 0; i < nodes.length; i++)
        for (let k = 0; k < nodes.length; k++) {
          const [s, t] = [(1 + nodes[i]!) / 2, (1 + nodes[k]!) / 2];
          const weight = (weights[i]! * weights[k]!) / 4;
          sum += (weight * a * b * (a - a * s) * (b - b * s * t)) / Math.hypot(a, b * t);
          sum += (weight * a * b * (b - b * s) * (a - a * s * t)) / Math.hypot(b, a * t);
        }
      const byQuadrature = (4 * sum) / (2 * Math.PI * a * b);
      expect(Math.abs(rectangularEndCorrectionM(a, b) / byQuadrature - 1)).toBeLessThan(1e-10);
    }
  });

  it('is symmetric, scales with size and shrinks relative to the equal circle as the slot narrows', () => {
    expect(rectangularEndCorrectionM(0.02, 0.2)).toBeCloseTo(rectangularEndCorrectionM(0.2, 0.02), 15);
    expect(rectangularEndCorrectionM(0.04, 0.4) / rectangularEndCorrectionM(0.02, 0.2)).toBeCloseTo(2, 12);
    const { overEquivalentRadius: square } = rectangularEndFactors(1, 1);
    expect(Math.abs(square - 0.8387)).toBeLessThan(1e-4);
    expect(rectangularEndFactors(1, 10).overEquivalentRadius).toBeLessThan(square);
  });
});

describe('meanInverseDistancePerM', () => {
  it('gives the worked case: 35 mm mouths 110 mm apart, 9.347 per metre by random points (physics notes, PORT-02)', () => {
    expect(Math.abs(meanInverseDistancePerM(0.035, 0.11) - 9.3468)).toBeLessThan(1e-3);
  });

  it('agrees with ∫ (2 J1(k)/k)² J0(kd) dk, the same mean in wavenumbers', () => {
    const { nodes, weights } = gaussLegendre(20);
    for (const distance of [2.1, 2.5, 4]) {
      let sum = 0;
      for (let panel = 0; panel < 4000; panel++)
        for (let i = 0; i < nodes.length; i++) {
          const k = 0.5 * (panel + (1 + nodes[i]!) / 2);
          sum += 0.25 * weights[i]! * ((2 * besselJ1(k)) / k) ** 2 * besselJ0(k * distance);
        }
      // What lies beyond k = 2000 oscillates with k^−3.5.
      expect(Math.abs(meanInverseDistancePerM(1, distance) / sum - 1)).toBeLessThan(distance < 2.5 ? 1e-5 : 2e-8);
    }
  });

  it('tends to 1/d far away, grows towards 5.4e-1 per radius at contact and refuses overlap', () => {
    expect(meanInverseDistancePerM(1, 1e4)).toBeCloseTo(1e-4, 11);
    expect(Math.abs(meanInverseDistancePerM(1, 2) - 0.544403)).toBeLessThan(5e-6);
    expect(() => meanInverseDistancePerM(1, 1.9)).toThrow(RangeError);
  });
});

describe('endCorrectionM', () => {
  it('adds 5.7 mm to each of two 70 mm ports 110 mm apart (physics notes, 4.3)', () => {
    expect(Math.abs(neighbourExtensionM({ kind: 'round', diameterM: 0.07 }, [0.11]) - 5.725e-3)).toBeLessThan(1e-6);
  });

  it('rises from free to flanged to on a wall, for tubes and slots', () => {
    for (const shape of [
      { kind: 'round', diameterM: 0.07 },
      { kind: 'slot', widthM: 0.2, heightM: 0.02 },
    ] as const) {
      const [free, flanged, wall] = [
        endCorrectionM(shape, 'free'),
        endCorrectionM(shape, 'flanged'),
        endCorrectionM(shape, 'on-wall'),
      ];
      expect(free).toBeLessThan(flanged);
      expect(flanged).toBeLessThan(wall);
      expect(free / flanged).toBeCloseTo(0.612701 / 0.82167, 12);
    }
  });

  it('does not care which side of a slot is called its width', () => {
    for (const end of ['free', 'flanged', 'on-wall'] as const) {
      const lying = endCorrectionM({ kind: 'slot', widthM: 0.2, heightM: 0.02 }, end);
      expect(endCorrectionM({ kind: 'slot', widthM: 0.02, heightM: 0.2 }, end)).toBeCloseTo(lying, 15);
    }
  });

  it('counts a slot along the bottom as a flush one of twice its height', () => {
    const slot = { kind: 'slot', widthM: 0.18, heightM: 0.03 } as const;
    expect(endCorrectionM(slot, 'on-wall')).toBe(endCorrectionM({ ...slot, heightM: 0.06 }, 'flanged'));
  });
});
