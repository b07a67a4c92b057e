import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Circle,
  COUPLING_ALLOWED,
  circleMutualH,
  coilMutualH,
  coilPairs,
  couplingFactor,
  crosstalkRatio,
  dipoleMutualH,
  leastDistanceM,
  MU0,
  outerDiametersM,
  ringMutualH,
  sheetEffect,
  type Vector,
} from '../../../../src/core/build/coils/index.ts';
import { brooksSection } from '../../../../src/core/build/winding/index.ts';

const circle = (radiusM: number, centre: Vector, axis: Vector = [0, 0, 1]): Circle => ({ radiusM, centre, axis });

/** Neumann's double sum over two circles whose axes lie in the plane x–z, each at an angle from z. */
function neumann(a: number, b: number, centre: Vector, tilt: number): number {
  const pieces = 400;
  let sum = 0;
  for (let i = 0; i < pieces; i++) {
    const s = (2 * Math.PI * i) / pieces;
    for (let k = 0; k < pieces; k++) {
      const t = (2 * Math.PI * k) / pieces;
      const x = centre[0] + b * Math.cos(t) * Math.cos(tilt) - a * Math.cos(s);
      const y = centre[1] + b * Math.sin(t) - a * Math.sin(s);
      const z = centre[2] - b * Math.cos(t) * Math.sin(tilt);
      sum += (Math.sin(s) * Math.sin(t) * Math.cos(tilt) + Math.cos(s) * Math.cos(t)) / Math.hypot(x, y, z);
    }
  }
  return ((MU0 / (4 * Math.PI)) * sum * a * b * (2 * Math.PI) ** 2) / pieces ** 2;
}

describe('two circles', () => {
  it('on one axis are Maxwell’s, by both ways', () => {
    // 7.16799068 nH: DLMF 19.34 and a line integral.
    expect(ringMutualH(0.03, 0.025, 0.04) / 7.16799068e-9).toBeCloseTo(1, 8);
    for (const [a, b, away] of [
      [0.03, 0.025, 0.04],
      [0.01, 0.03, 0.001],
      [0.02, 0.02, 3],
    ] as const) {
      expect(circleMutualH(circle(a, [0, 0, 0]), circle(b, [0, 0, away]), 8) / ringMutualH(a, b, away)).toBeCloseTo(
        1,
        9,
      );
    }
    expect(() => ringMutualH(0.02, 0.02, 0)).toThrow(RangeError);
  });
  it('on one axis do not jump where the series takes over', () => {
    // m = 1e-3 lies at a distance of 63.2 radii.
    const [nearer, farther] = [63.21, 63.22].map((away) => ringMutualH(1, 1, away) * (away * away + 4) ** 1.5);
    expect(Math.abs(nearer! / farther! - 1)).toBeLessThan(3e-7);
  });
  it('anywhere are Neumann’s double sum', () => {
    for (const [centre, tilt] of [
      [[0.08, 0, 0], 0],
      [[0.05, 0.02, 0.03], 0.7],
      [[0, 0.01, 0.06], 2.5],
    ] as const) {
      const tilted = circle(0.025, centre, [Math.sin(tilt), 0, Math.cos(tilt)]);
      const found = circleMutualH(circle(0.03, [0, 0, 0]), tilted, 120);
      expect(found / neumann(0.03, 0.025, centre, tilt)).toBeCloseTo(1, 7);
    }
  });
  it('do not care which is first, nor which way an axis is written, but for its sign (seed 95)', () => {
    const coordinate = fc.double({ min: -1, max: 1, noNaN: true });
    const axis = fc.tuple(coordinate, coordinate, fc.double({ min: 0.1, max: 1, noNaN: true }));
    fc.assert(
      fc.property(axis, axis, axis, (n1, n2, towards) => {
        const distance = Math.hypot(...towards);
        const centre: Vector = [
          (0.12 * towards[0]) / distance,
          (0.12 * towards[1]) / distance,
          (0.12 * towards[2]) / distance,
        ];
        const [first, second] = [circle(0.03, [0, 0, 0], n1), circle(0.02, centre, n2)];
        const forwards = circleMutualH(first, second, 80);
        // Relative to the parallel value: some positions have none at all.
        const scale = Math.abs(ringMutualH(0.03, 0.02, 0.12));
        expect(Math.abs(circleMutualH(second, first, 80) - forwards)).toBeLessThan(1e-9 * scale);
        const turned: Vector = [-2 * n2[0], -2 * n2[1], -2 * n2[2]];
        expect(Math.abs(circleMutualH(first, circle(0.02, centre, turned), 80) + forwards)).toBeLessThan(1e-9 * scale);
        // Eight radii away the dipole is within 10 % of the parallel value.
        const away: Vector = [centre[0] * 4, centre[1] * 4, centre[2] * 4];
        const far = circle(0.02, away, n2);
        const dipole = dipoleMutualH(first, far);
        expect(Math.abs(circleMutualH(first, far, 40) - dipole)).toBeLessThan(0.05 * (scale / 64) * 2);
      }),
      { seed: 95, numRuns: 60 },
    );
  });
  it('as dipoles are −1/2 of the coaxial value side by side, and 28 % low at 1.5 times the radii', () => {
    const first = circle(0.03, [0, 0, 0]);
    const beside = circle(0.025, [0.08, 0, 0]);
    const behind = circle(0.025, [0, 0, 0.08]);
    expect(dipoleMutualH(first, beside) / dipoleMutualH(first, behind)).toBeCloseTo(-0.5, 12);
    expect(1 - dipoleMutualH(first, beside) / circleMutualH(first, beside, 80)).toBeCloseTo(0.28, 2);
  });
});

describe('two coils', () => {
  const section = brooksSection(0.012, 200);
  const coil = { section, centre: [0, 0, 0] as const, axis: [0, 0, 1] as const };
  const at = (diameters: number, towards: Vector, axis: Vector = [0, 0, 1]) => {
    const awayM = outerDiametersM(section, diameters);
    return { section, centre: [towards[0] * awayM, towards[1] * awayM, towards[2] * awayM] as const, axis };
  };
  it('couple as in the table of distances in outer diameters', () => {
    for (const [diameters, coaxial, side] of [
      [1, 0.046, -0.0503],
      [1.5, 0.0164, -0.01146],
      [3, 0.00233, -0.001266],
    ] as const) {
      expect(Math.abs(couplingFactor(coil, at(diameters, [0, 0, 1])) / coaxial - 1)).toBeLessThan(5e-3);
      expect(Math.abs(couplingFactor(coil, at(diameters, [1, 0, 0])) / side - 1)).toBeLessThan(5e-3);
    }
  });
  it('do not couple where one axis lies in the other’s middle plane, and by the sine of a tilt from there', () => {
    const along = couplingFactor(coil, at(1.5, [1, 0, 0]));
    expect(Math.abs(couplingFactor(coil, at(1.5, [1, 0, 0], [1, 0, 0])))).toBeLessThan(1e-12);
    const tilt = (5 * Math.PI) / 180;
    const tilted = couplingFactor(coil, at(1.5, [1, 0, 0], [0, Math.cos(tilt), Math.sin(tilt)]));
    expect(tilted / along / Math.sin(tilt)).toBeCloseTo(1, 1);
  });
  it('stacked touching have half of all flux in common, and more filaments change nothing that matters', () => {
    expect(couplingFactor(coil, { ...coil, centre: [0, 0, 0.012] })).toBeCloseTo(0.5, 1);
    const beside = at(1, [1, 0, 0]);
    expect(Math.abs(coilMutualH(coil, beside, 4, 60) / coilMutualH(coil, beside, 7, 120) - 1)).toBeLessThan(1e-3);
  });
  it('need 1.8 diameters on one axis and 1.56 side by side for 1 %, and there they have it', () => {
    const found = leastDistanceM(section, section, 'side-by-side', COUPLING_ALLOWED.to40Db);
    expect(found / 0.048).toBeCloseTo(1.56, 2);
    expect(Math.abs(couplingFactor(coil, at(found / 0.048, [1, 0, 0])))).toBeCloseTo(0.01, 7);
    expect(leastDistanceM(section, section, 'coaxial', 0.01) / 0.048).toBeCloseTo(1.8, 2);
    expect(leastDistanceM(section, section, 'side-by-side', 0.9)).toBeCloseTo(0.048, 12);
  });
  it('leak k √(L2/L1), and a sheet of metal acts as their image at twice its distance', () => {
    expect(crosstalkRatio(-0.01, 1e-3, 4e-3)).toBeCloseTo(0.02, 12);
    const iron = sheetEffect(section, 0.9 * 0.048, 'iron');
    expect(iron).toBeCloseTo(0.01, 3);
    expect(sheetEffect(section, 0.9 * 0.048, 'non-magnetic')).toBe(-iron);
  });
  it('of a board are ranked with the worst first', () => {
    const pairs = coilPairs([
      { ...coil, id: 'L1' },
      { ...at(1, [1, 0, 0]), id: 'L2' },
      { ...at(3, [1, 0, 0], [1, 0, 0]), id: 'L3' },
      { ...coil, centre: [0, 0.03, 0.03], section: brooksSection(0.006, 100), id: 'L4' },
    ]);
    expect(pairs).toHaveLength(6);
    const sizes = pairs.map(({ coupling }) => Math.abs(coupling));
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
    const [ours] = pairs.filter(({ first, second }) => first === 'L1' && second === 'L2');
    expect(ours).toMatchObject({ isClose: false });
    expect(ours!.leakIntoSecond).toBeCloseTo(Math.abs(ours!.coupling), 12);
    const [small] = pairs.filter(({ first, second }) => first === 'L1' && second === 'L4');
    // L4 has half the size and half the turns of L1: an eighth of its inductance.
    expect(small!.leakIntoFirst / small!.leakIntoSecond).toBeCloseTo(8, 6);
    expect(small!.isClose).toBe(small!.distanceM < 0.036);
  });
});
