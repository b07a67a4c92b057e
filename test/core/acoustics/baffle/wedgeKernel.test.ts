import { describe, expect, it } from 'vitest';
import { EDGE_FACTOR, wedgeKernel, wedgeTerms } from '../../../../src/core/acoustics/baffle/wedgeKernel.ts';
import { gaussLegendre } from '../../../../src/core/math/index.ts';

describe('wedgeKernel', () => {
  it('gives the solid-angle ratio 4/3 of a 270-degree edge for a source close to it, at k = 0, in every direction', () => {
    // p/p_free = 2 − (ν/4π) ∫ B r/(m l) dz in front; 0 − ... behind. z = d sinh t covers the infinite edge.
    const rule = gaussLegendre(200);
    const d = 1e-6;
    for (const angle of [0.3, 1, 2.5, 3.8, 4.6]) {
      const terms = wedgeTerms(angle);
      let sum = 0;
      const limit = Math.asinh(1e4 / d);
      for (let i = 0; i < rule.nodes.length; i++) {
        const t = limit * rule.nodes[i]!;
        const z = d * Math.sinh(t);
        const [m, l] = [Math.hypot(d, z), Math.hypot(1, z)];
        const weight = limit * rule.weights[i]! * d * Math.cosh(t);
        sum += (EDGE_FACTOR * wedgeKernel(terms, (m * l + z * z) / d) * weight) / (m * l);
      }
      expect(Math.abs((angle < Math.PI ? 2 : 0) - sum - 4 / 3), `angle ${angle}`).toBeLessThan(2e-3);
    }
  });

  it('gives 2/√3 on the axis of a circular front, where every edge point is alike (2 − (2/√3) exp(−jka))', () => {
    // Straight edge elements seen from above at 90 degrees, η = 0: (ν/4π) B · 2π = 2/√3 per turn.
    expect(EDGE_FACTOR * wedgeKernel(wedgeTerms(Math.PI / 2), 1) * 2 * Math.PI).toBeCloseTo(2 / Math.sqrt(3), 12);
  });

  it('takes rounding below cosh η = 1 for 1', () => {
    expect(wedgeKernel(wedgeTerms(1), 1 - 1e-15)).toBe(wedgeKernel(wedgeTerms(1), 1));
  });
});
