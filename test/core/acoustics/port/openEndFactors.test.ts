import { describe, expect, it } from 'vitest';
import {
  FLANGED_END_RADII,
  FREE_END_RADII,
  FREE_END_RADII_PRINTED,
  PISTON_END_RADII,
} from '../../../../src/core/acoustics/index.ts';
import { besselJ1, besselJ1Zero, gaussLegendre } from '../../../../src/core/math/index.ts';

/** I1(x) and K1(x) by their integrals (DLMF 10.32.3 and 10.32.9), by rules that converge exponentially. */
const modifiedBessel = (x: number): { readonly i1: number; readonly k1: number } => {
  let [i1, k1] = [0, 0];
  for (let n = 0; n < 200; n++) {
    const t = (Math.PI * (n + 0.5)) / 200;
    i1 += (Math.exp(x * Math.cos(t)) * Math.cos(t)) / 200;
  }
  const step = 0.01;
  for (let n = 0; n <= 2000; n++) {
    const t = n * step;
    const weight = n === 0 ? step / 2 : step;
    const exponent = -x * Math.cosh(t);
    if (exponent < -700) break;
    k1 += weight * Math.exp(exponent) * Math.cosh(t);
  }
  return { i1, k1 };
};

describe('end factors of open pipes', () => {
  it('free end: the quadrature of Levine and Schwinger’s integral gives 0.6127, 0.1 % below the printed 0.6133', () => {
    // (1/π) ∫ ln(1/(2 I1 K1))/x² dx, mapped by x = e^u, from 1e-3 to 300.
    const { nodes, weights } = gaussLegendre(60);
    const [from, to] = [Math.log(1e-3), Math.log(300)];
    let sum = 0;
    for (let piece = 0; piece < 8; piece++) {
      const start = from + ((to - from) * piece) / 8;
      for (let i = 0; i < nodes.length; i++) {
        const u = start + ((to - from) / 16) * (1 + nodes[i]!);
        const x = Math.exp(u);
        const { i1, k1 } = modifiedBessel(x);
        sum += ((to - from) / 16) * weights[i]! * (-Math.log(2 * i1 * k1) / x);
      }
    }
    // Beyond 300: 2 I1 K1 = 1/x. Below 1e-3: −ln(2 I1 K1)/x² = ½ (ln(2/x) − γ + ½) − 1/8 by the power series (DLMF 10.25.2, 10.31.1).
    const tail = (Math.log(300) + 1) / 300;
    const head = 1e-3 * ((Math.log(2e3) + 1 - 0.5772156649 + 0.5) / 2 - 1 / 8);
    expect(Math.abs((head + sum + tail) / Math.PI - FREE_END_RADII)).toBeLessThan(1e-6);
    expect(Math.abs(FREE_END_RADII / FREE_END_RADII_PRINTED - 1)).toBeLessThan(1.1e-3);
  });

  /** Modes of the tube matched to the half space at its mouth, static limit; `modes` evanescent ones besides the plane one. */
  const flangedByModes = (modes: number): number => {
    const panels = 300;
    const zeros = [0, ...Array.from({ length: panels }, (_, n) => besselJ1Zero(n + 1))];
    const rule = gaussLegendre(10);
    const overlap = Array.from({ length: modes + 1 }, () => new Float64Array(modes + 1));
    for (let panel = 0; panel < panels; panel++) {
      const half = (zeros[panel + 1]! - zeros[panel]!) / 2;
      for (let i = 0; i < rule.nodes.length; i++) {
        const k = zeros[panel]! + half * (1 + rule.nodes[i]!);
        const j = besselJ1(k);
        const shapes = Float64Array.from({ length: modes + 1 }, (_, n) => (k * j) / (k * k - zeros[n]! ** 2));
        for (let m = 0; m <= modes; m++)
          for (let n = 0; n <= modes; n++)
            overlap[m]![n]! += 2 * Math.PI * half * rule.weights[i]! * shapes[m]! * shapes[n]!;
      }
    }
    const end = zeros[panels]!;
    for (const row of overlap)
      row.forEach((value, n) => {
        row[n] = value + 1 / end ** 2;
      });
    // (G + π/γ) v = −G0, then δ = (G00 + G0·v)/π; symmetric and positive: plain elimination.
    const rows = Array.from({ length: modes }, (_, m) => [
      ...Array.from({ length: modes }, (_, n) => overlap[m + 1]![n + 1]! + (m === n ? Math.PI / zeros[m + 1]! : 0)),
      -overlap[m + 1]![0]!,
    ]);
    for (let k = 0; k < modes; k++)
      for (let r = k + 1; r < modes; r++) {
        const share = rows[r]![k]! / rows[k]![k]!;
        for (let c = k; c <= modes; c++) rows[r]![c]! -= share * rows[k]![c]!;
      }
    const speeds = new Float64Array(modes);
    for (let k = modes - 1; k >= 0; k--) {
      let rest = rows[k]![modes]!;
      for (let c = k + 1; c < modes; c++) rest -= rows[k]![c]! * speeds[c]!;
      speeds[k] = rest / rows[k]![k]!;
    }
    return speeds.reduce((sum, v, n) => sum + overlap[0]![n + 1]! * v, overlap[0]![0]!) / Math.PI;
  };

  it('flanged end: mode matching tends to 0.82167 (printed 0.8217, Norris & Sheng 1989)', () => {
    expect(Math.abs(flangedByModes(0) - PISTON_END_RADII)).toBeLessThan(1e-6);
    const [coarse, middle, fine] = [flangedByModes(15), flangedByModes(30), flangedByModes(60)];
    // The edge singularity makes the steps shrink by a constant factor: Aitken's limit.
    const limit = fine - (fine - middle) ** 2 / (fine - middle - (middle - coarse));
    expect(Math.abs(limit - FLANGED_END_RADII)).toBeLessThan(2e-5);
    expect(Math.abs(FLANGED_END_RADII - 0.8217)).toBeLessThan(1e-4);
  });
});
