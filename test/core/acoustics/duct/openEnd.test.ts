import { describe, expect, it } from 'vitest';
import {
  FREE_END_RADII,
  openEnd,
  openEndAdmittance,
  PISTON_END_RADII,
  pistonImpedance,
} from '../../../../src/core/acoustics/index.ts';
import { besselJ1, complex, gaussLegendre } from '../../../../src/core/math/index.ts';
import { admittanceAt } from '../sweep.ts';
import { apart, STILL_AIR } from './integrate.ts';

const EULER = 0.5772156649015329;
const { nodes, weights } = gaussLegendre(40);

/** ∫ f over [from, to] in pieces. */
const integral = (f: (x: number) => number, from: number, to: number, pieces: number): number => {
  const half = (to - from) / pieces / 2;
  let sum = 0;
  for (let piece = 0; piece < pieces; piece++)
    for (let i = 0; i < nodes.length; i++) sum += half * weights[i]! * f(from + half * (2 * piece + 1 + nodes[i]!));
  return sum;
};

/** Y1 by its power series (DLMF 10.8.1), good below x = 4. */
const secondKind = (x: number): number => {
  const q = (x * x) / 4;
  let [term, harmonic, sum] = [x / 2, 0, 0];
  for (let k = 0; k < 40; k++) {
    sum += term * (2 * harmonic + 1 / (k + 1) - 2 * EULER);
    harmonic += 1 / (k + 1);
    term *= -q / ((k + 1) * (k + 2));
  }
  return (2 * Math.log(x / 2) * besselJ1(x) - sum - 2 / x) / Math.PI;
};

/** I1 K1 by their integrals (DLMF 10.32.3 and 10.32.9). */
const modified = (x: number): number => {
  const i1 = integral((t) => Math.exp(x * (Math.cos(t) - 1)) * Math.cos(t), 0, Math.PI, 6) / Math.PI;
  const top = Math.acosh(1 + 60 / x);
  const k1 = integral((t) => Math.exp(-x * (Math.cosh(t) - 1)) * Math.cosh(t), 0, top, 6);
  return i1 * k1;
};

/** |R| and δ/a of Levine and Schwinger’s integrals by quadrature. */
const exact = (ka: number): { readonly reflection: number; readonly endRadii: number } => {
  const inner = (f: (x: number) => number): number =>
    integral((u) => f(ka * Math.sin(u ** 2)) * 2 * u, 0, Math.sqrt(Math.PI / 2), 4);
  const angle = inner((x) => Math.atan2(besselJ1(x), -secondKind(x)) / x);
  const near = inner((x) => {
    const [j, y] = [besselJ1(x), secondKind(x)];
    return Math.log(Math.PI * j * Math.hypot(j, y)) / x;
  });
  const far = integral((u) => -Math.log(2 * modified(Math.exp(u))) / Math.hypot(Math.exp(u), ka), -12, 8, 24);
  const tail = 9 / Math.exp(8);
  return { reflection: Math.exp((-2 * ka * angle) / Math.PI), endRadii: (near + far + tail) / Math.PI };
};

describe('free open end', () => {
  it('agrees with Levine and Schwinger’s integrals: |R| within 0.02 %, δ within 0.003 %, up to ka = 3', () => {
    for (const ka of [0.03, 0.1, 0.3, 0.5, 0.9, 1, 1.4, 2, 2.6, 2.99]) {
      const wanted = exact(ka);
      const got = openEnd('free', ka);
      expect(Math.abs(got.reflection / wanted.reflection - 1), `|R| at ${ka}`).toBeLessThan(2e-4);
      expect(Math.abs(got.endRadii / wanted.endRadii - 1), `δ at ${ka}`).toBeLessThan(3e-5);
    }
  });

  it('agrees with the published rational fit within 1.1 % in |R| and 0.4 % in δ up to ka = 1.2 (Dalmont et al. 2001)', () => {
    for (let ka = 0.05; ka <= 1.2; ka += 0.05) {
      const fit = (1 + 0.2 * ka - 0.084 * ka ** 2) / (1 + 0.2 * ka + 0.416 * ka ** 2);
      const length = 0.6133 * ((1 + 0.044 * ka ** 2) / (1 + 0.19 * ka ** 2) - 0.02 * Math.sin(2 * ka) ** 2);
      const got = openEnd('free', ka);
      expect(Math.abs(got.reflection / fit - 1)).toBeLessThan(0.011);
      expect(Math.abs(got.endRadii / length - 1)).toBeLessThan(0.004);
    }
  });

  it('is (ka)²/4 + 0.6127 j ka at low ka, and lets all out at high ka', () => {
    const low = openEnd('free', 1e-3).z;
    expect(low.re / 0.25e-6).toBeCloseTo(1, 2);
    expect(low.im / 1e-3).toBeCloseTo(FREE_END_RADII, 4);
    expect(apart(openEnd('free', 30).z, complex(1))).toBeLessThan(1e-9);
  });

  it('goes over into the large-ka form without a step above 0.2 % of the wave', () => {
    const [below, above] = [openEnd('free', 3 - 1e-9), openEnd('free', 3)];
    expect(apart(below.z, above.z)).toBeLessThan(2e-3);
  });
});

describe('both ends', () => {
  it('reflect no more than comes, at any ka: z has no negative real part', () => {
    for (const end of ['free', 'flanged'] as const) {
      for (let ka = 1e-4; ka < 200; ka *= 1.07) {
        const { z, reflection, endRadii } = openEnd(end, ka);
        expect(z.re).toBeGreaterThan(0);
        expect(reflection).toBeLessThan(1);
        expect(Number.isFinite(endRadii) && Number.isFinite(z.im)).toBe(true);
      }
    }
  });

  it('the flanged one is the piston of Rayleigh, 0.8488 radii long', () => {
    expect(openEnd('flanged', 0.7).z).toEqual(pistonImpedance(0.7));
    expect(openEnd('flanged', 1e-3).endRadii).toBeCloseTo(PISTON_END_RADII, 5);
  });

  it('as a load: S/(ρc z), and three mouths take three times the flow of one', () => {
    const areaM2 = Math.PI * 0.05 ** 2;
    const one = admittanceAt(openEndAdmittance({ end: 'flanged', areaM2, count: 1 }, STILL_AIR), [500]);
    const three = admittanceAt(openEndAdmittance({ end: 'flanged', areaM2, count: 3 }, STILL_AIR), [500]);
    const z = pistonImpedance((2 * Math.PI * 500 * 0.05) / 343.2);
    const square = z.re ** 2 + z.im ** 2;
    const unit = areaM2 / (1.2041 * 343.2);
    expect(apart(one[0]!, complex((unit * z.re) / square, (-unit * z.im) / square))).toBeLessThan(1e-13);
    expect(three[0]!.re / one[0]!.re).toBeCloseTo(3, 12);
  });
});
