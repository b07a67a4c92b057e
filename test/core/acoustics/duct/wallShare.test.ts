import { describe, expect, it } from 'vitest';
import { besselRatioOnDiagonal, roundWallShare, slitWallShare } from '../../../../src/core/acoustics/index.ts';
import { add, type Complex, complex, divide, multiply, scale, subtract } from '../../../../src/core/math/index.ts';
import { apart } from './integrate.ts';

/** J1/J0 by their power series, exact below |x| = 8 but for cancellation. */
const seriesRatio = (x: Complex): Complex => {
  const q = scale(multiply(x, x), -0.25);
  let [j0, j1, term] = [complex(1), complex(1), complex(1)];
  for (let k = 1; k < 60; k++) {
    term = scale(multiply(term, q), 1 / (k * k));
    j0 = add(j0, term);
    j1 = add(j1, scale(term, 1 / (k + 1)));
  }
  return divide(multiply(scale(x, 0.5), j1), j0);
};

/**
 * 1 − F by finite volumes: mean of the profile g with g − (1/jr²) ∇²g = 1 and g = 0 at the wall; radius or half gap 1. Round: cells are rings.
 */
const profileMean = (r: number, round: boolean, cells: number): Complex => {
  const h = 1 / cells;
  const face = (n: number): number => (round ? n * h : 1);
  const volume = (n: number): number => (round ? (n + 0.5) * h * h : h);
  const diffusion = (conductance: number): Complex => complex(0, conductance / (r * r));
  // Thomas' algorithm from the middle out: g_n = p_n g_{n+1} + q_n, all as complex numbers.
  const [p, q]: [Complex[], Complex[]] = [[], []];
  for (let n = 0; n < cells; n++) {
    // −(1/(j r²)) = j/r²; so g V − (j/r²)(flux out − flux in)·(−1) ... flux through a face: conductance (g_{n+1} − g_n).
    const out = diffusion(n === cells - 1 ? (2 * face(cells)) / h : face(n + 1) / h);
    const inward = n === 0 ? complex(0) : diffusion(face(n) / h);
    const diagonal = subtract(subtract(complex(volume(n)), out), inward);
    const left = n === 0 ? complex(0) : multiply(inward, p[n - 1]!);
    const pivot = add(diagonal, left);
    const known = n === 0 ? complex(volume(n)) : subtract(complex(volume(n)), multiply(inward, q[n - 1]!));
    p[n] = n === cells - 1 ? complex(0) : divide(scale(out, -1), pivot);
    q[n] = divide(known, pivot);
  }
  let [g, sum, whole] = [complex(0), complex(0), 0];
  for (let n = cells - 1; n >= 0; n--) {
    g = add(multiply(p[n]!, g), q[n]!);
    sum = add(sum, scale(g, volume(n)));
    whole += volume(n);
  }
  return scale(sum, 1 / whole);
};

describe('besselRatioOnDiagonal', () => {
  it('is the ratio of the power series', () => {
    for (const r of [1e-3, 0.1, 1, 3, 8]) {
      const x = complex(r * Math.SQRT1_2, -r * Math.SQRT1_2);
      expect(apart(besselRatioOnDiagonal(r), seriesRatio(x)), `r ${r}`).toBeLessThan(1e-12);
    }
  });

  it('passes from the fraction to the expansion without a step, and tends to −j without overflow', () => {
    // The derivative is (r − 1/r…) small there: neighbours 1e-9 apart differ by less than 1e-11.
    expect(apart(besselRatioOnDiagonal(30 - 1e-9), besselRatioOnDiagonal(30 + 1e-9))).toBeLessThan(1e-11);
    expect(apart(besselRatioOnDiagonal(1e5), complex(0, -1))).toBeLessThan(1e-5);
  });
});

describe('wall shares', () => {
  it('agree with the profile across the section by finite volumes, rings or plates (error as 1/cells²)', () => {
    for (const r of [0.5, 2, 6, 20]) {
      for (const [share, round] of [
        [roundWallShare, true],
        [slitWallShare, false],
      ] as const) {
        const free = subtract(complex(1), share(r));
        const [coarse, fine] = [profileMean(r, round, 1000), profileMean(r, round, 2000)];
        const limit = subtract(scale(fine, 4 / 3), scale(coarse, 1 / 3));
        expect(apart(free, limit), `r ${r} ${round ? 'round' : 'slit'}`).toBeLessThan(2e-7);
      }
    }
  });

  it('are all of a narrow section, and (1 − j) times the layer over the radius of a wide one', () => {
    for (const share of [roundWallShare, slitWallShare]) {
      expect(apart(share(0.01), complex(1))).toBeLessThan(1e-4);
    }
    // Layer √2/r radii of a tube, of half a gap: F = 2 (1 − j)/(√2 r)·... = (1 − j) √2/r and (1 − j)/(√2 r).
    const r = 3000;
    expect(apart(roundWallShare(r), scale(complex(1, -1), Math.SQRT2 / r))).toBeLessThan(1e-3);
    expect(apart(slitWallShare(r), scale(complex(1, -1), Math.SQRT1_2 / r))).toBeLessThan(1e-12);
  });
});
