import { describe, expect, it } from 'vitest';
import { gaussLegendre } from '../../../src/core/math/index.ts';

describe('gaussLegendre', () => {
  it('gives the printed rule of five points (Abramowitz & Stegun, table 25.4)', () => {
    const { nodes, weights } = gaussLegendre(5);
    const printed = [
      [-0.906179845938664, 0.236926885056189],
      [-0.538469310105683, 0.478628670499366],
      [0, 0.568888888888889],
      [0.538469310105683, 0.478628670499366],
      [0.906179845938664, 0.236926885056189],
    ] as const;
    printed.forEach(([node, weight], i) => {
      expect(Math.abs(nodes[i]! - node)).toBeLessThan(6e-16);
      expect(Math.abs(weights[i]! - weight)).toBeLessThan(1e-15);
    });
  });

  it('is exact up to degree 2n − 1 and not beyond', () => {
    for (const count of [1, 2, 3, 8, 31, 120]) {
      const { nodes, weights } = gaussLegendre(count);
      const power = (degree: number) => nodes.reduce((sum, x, i) => sum + weights[i]! * x ** degree, 0);
      for (let degree = 0; degree <= 2 * count - 1; degree++) {
        const exact = degree % 2 === 0 ? 2 / (degree + 1) : 0;
        expect(Math.abs(power(degree) - exact), `degree ${degree} by ${count} points`).toBeLessThan(2e-14);
      }
      if (count < 9) expect(Math.abs(power(2 * count) - 2 / (2 * count + 1))).toBeGreaterThan(1e-6);
    }
  });

  it('refuses counts that make no rule', () => {
    for (const count of [0, 2.5, 201]) expect(() => gaussLegendre(count)).toThrow(RangeError);
  });
});
