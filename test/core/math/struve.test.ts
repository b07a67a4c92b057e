import { describe, expect, it } from 'vitest';
import { gaussLegendre, struveH0, struveH1 } from '../../../src/core/math/index.ts';

/** H_n(x) = (2 (x/2)^n/(√π Γ(n + ½))) ∫0..π/2 sin(x cos θ) sin^2n θ dθ (DLMF 11.5.1), n = 0, 1. */
const struveByIntegral = (order: 0 | 1, x: number): number => {
  const { nodes, weights } = gaussLegendre(120);
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    const angle = (Math.PI / 4) * (1 + nodes[i]!);
    sum += (Math.PI / 4) * weights[i]! * Math.sin(x * Math.cos(angle)) * Math.sin(angle) ** (2 * order);
  }
  return ((order === 0 ? 2 : 2 * x) / Math.PI) * sum;
};

describe('struveH0 and struveH1', () => {
  it('give the printed values (Abramowitz & Stegun, table 12.1, as quoted)', () => {
    for (const [x, h1] of [
      [0.5, 0.05217],
      [1, 0.1985],
      [3, 1.0201],
      [6, 0.4782],
      [8, 0.4881],
      [10, 0.8918],
    ] as const)
      expect(Math.abs(struveH1(x) - h1)).toBeLessThan(6e-5);
    for (const [x, h0] of [
      [0.5, 0.3096],
      [3, 0.5743],
      [8, 0.302],
    ] as const)
      expect(Math.abs(struveH0(x) - h0)).toBeLessThan(6e-5);
  });

  it('gives H1(2) as a compiled general-purpose library prints it (cephes 3.3.3)', () => {
    expect(Math.abs(struveH1(2) - 0.6467637282835622)).toBeLessThan(1e-15);
  });

  it('agree with the integral form to 1e-13 across all methods and their joints', () => {
    for (let x = 0.01; x < 100; x += 0.3711) {
      expect(Math.abs(struveH0(x) - struveByIntegral(0, x)), `H0(${x})`).toBeLessThan(1e-13);
      expect(Math.abs(struveH1(x) - struveByIntegral(1, x)), `H1(${x})`).toBeLessThan(1e-13);
    }
    for (const x of [2 - 1e-12, 2, 40 - 1e-12, 40]) {
      expect(Math.abs(struveH0(x) - struveByIntegral(0, x)), `H0(${x})`).toBeLessThan(1e-13);
      expect(Math.abs(struveH1(x) - struveByIntegral(1, x)), `H1(${x})`).toBeLessThan(1e-13);
    }
  });

  it('are odd and even, and start as 2x/π and 2x²/(3π)', () => {
    expect(struveH0(-3)).toBe(-struveH0(3));
    expect(struveH1(-3)).toBe(struveH1(3));
    expect(Math.abs((struveH0(1e-5) * Math.PI) / 2e-5 - 1)).toBeLessThan(1e-10);
    expect(Math.abs((struveH1(1e-5) * 3 * Math.PI) / 2e-10 - 1)).toBeLessThan(1e-10);
  });
});
