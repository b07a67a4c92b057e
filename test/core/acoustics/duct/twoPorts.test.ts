import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allardChampouxFluid,
  cascadeTwoPorts,
  closedInputImpedance,
  coneTwoPort,
  type Duct,
  type DuctSection,
  ductTwoPort,
  exponentialTwoPort,
  loadedInputImpedance,
  openInputImpedance,
  reversedTwoPort,
  roundDuct,
  TAPER_SLICES,
  type TwoPort,
  twoPortDeterminant,
} from '../../../../src/core/acoustics/index.ts';
import { complex, magnitude, subtract } from '../../../../src/core/math/index.ts';
import { apart, constantsAlong, integrated, omegaOf, STILL_AIR } from './integrate.ts';

const AIR = STILL_AIR;
const LOSSLESS = { ...AIR, viscosityPaS: 1e-20 };
const entries = ['a', 'b', 'c', 'd'] as const;
const furthest = (x: TwoPort, y: TwoPort): number => Math.max(...entries.map((name) => apart(x[name], y[name])));

const size = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const section: fc.Arbitrary<DuctSection> = fc.oneof(
  size(5e-4, 0.15).map((radiusM) => roundDuct(radiusM)),
  fc.record({ kind: fc.constant('slot' as const), widthM: size(0.02, 0.3), heightM: size(2e-3, 0.1) }),
  fc.record({ kind: fc.constant('slit' as const), widthM: size(0.02, 0.3), gapM: size(1e-4, 0.02) }),
);

describe('uniform ducts', () => {
  it('AD − BC = 1, near and far alike, and two halves make one (seed 62)', () => {
    fc.assert(
      fc.property(section, size(0.01, 2), size(10, 2000), fc.option(size(100, 2e4)), (shape, lengthM, f, sigma) => {
        const fluid = sigma === null ? {} : { fluid: allardChampouxFluid(sigma, AIR) };
        const duct: Duct = { section: shape, lengthM, ...fluid };
        const whole = ductTwoPort(duct, AIR, omegaOf(f));
        const growth = magnitude(whole.a) ** 2;
        fc.pre(growth < 1e10);
        expect(magnitude(subtract(twoPortDeterminant(whole), complex(1)))).toBeLessThan(1e-13 * (1 + growth));
        expect(reversedTwoPort(whole)).toEqual(whole);
        const half = ductTwoPort({ ...duct, lengthM: lengthM / 2 }, AIR, omegaOf(f));
        const twice = cascadeTwoPorts(half, half);
        for (const name of entries) {
          const unit = magnitude(whole[name]) + 1e-3 * magnitude(half[name]);
          expect(magnitude(subtract(twice[name], whole[name]))).toBeLessThan(1e-11 * unit);
        }
      }),
      { seed: 62 },
    );
  });

  it('agree with the line equations integrated step by step, empty and filled', () => {
    for (const fluid of [undefined, allardChampouxFluid(1500, AIR)]) {
      for (const f of [40, 300]) {
        const duct: Duct = { section: roundDuct(0.035), lengthM: 0.8, ...(fluid ? { fluid } : {}) };
        const stepped = integrated(constantsAlong(duct, AIR, omegaOf(f)), 0.8, 400);
        expect(furthest(ductTwoPort(duct, AIR, omegaOf(f)), stepped)).toBeLessThan(1e-8);
      }
    }
  });

  it('closed and short: a compliance; open and short: a mass; with a load: in between', () => {
    const tube = ductTwoPort({ section: roundDuct(0.05), lengthM: 0.1 }, LOSSLESS, omegaOf(20));
    const [areaM2, rho, c] = [Math.PI * 0.05 ** 2, 1.2041, 343.2];
    const stiff = (rho * c * c) / (areaM2 * 0.1 * omegaOf(20));
    const mass = (omegaOf(20) * rho * 0.1) / areaM2;
    expect(apart(closedInputImpedance(tube), complex(0, -stiff))).toBeLessThan(1e-3);
    expect(apart(openInputImpedance(tube), complex(0, mass))).toBeLessThan(1e-3);
    expect(apart(loadedInputImpedance(tube, complex(0)), openInputImpedance(tube))).toBeLessThan(1e-15);
    expect(apart(loadedInputImpedance(tube, complex(1e12)), closedInputImpedance(tube))).toBeLessThan(1e-5);
  });
});

describe('cones and horns without losses', () => {
  const areaHorn = (areaAt: (share: number) => number, omega: number) => (share: number) => ({
    series: complex(0, (omega * 1.2041) / areaAt(share)),
    shunt: complex(0, (omega * areaAt(share)) / (1.2041 * 343.2 ** 2)),
  });

  it('agree with Webster’s equation integrated step by step', () => {
    const omega = omegaOf(300);
    for (const [r1, r2] of [
      [0.03, 0.05],
      [0.05, 0.02],
    ] as const) {
      const cone = coneTwoPort({ nearRadiusM: r1, farRadiusM: r2, lengthM: 0.4 }, AIR, omega);
      const stepped = integrated(
        areaHorn((share) => Math.PI * (r1 + (r2 - r1) * share) ** 2, omega),
        0.4,
        400,
      );
      expect(furthest(cone, stepped)).toBeLessThan(1e-7);
    }
    for (const f of [20, 120]) {
      const horn = exponentialTwoPort({ nearAreaM2: 0.004, farAreaM2: 0.02, lengthM: 1 }, AIR, omegaOf(f));
      const stepped = integrated(
        areaHorn((share) => 0.004 * 5 ** share, omegaOf(f)),
        1,
        400,
      );
      expect(furthest(horn, stepped)).toBeLessThan(1e-7);
    }
  });

  it('become a plain tube where nothing widens, and pass through the cut-off without a step', () => {
    const tube = ductTwoPort({ section: roundDuct(0.04), lengthM: 0.5 }, LOSSLESS, omegaOf(200));
    const cone = coneTwoPort({ nearRadiusM: 0.04, farRadiusM: 0.04, lengthM: 0.5 }, AIR, omegaOf(200));
    expect(furthest(cone, tube)).toBeLessThan(1e-6);
    const horn = { nearAreaM2: 0.004, farAreaM2: 0.02, lengthM: 1 };
    const cutOff = (Math.log(5) / 2) * AIR.soundSpeedMPerS;
    const [below, at, above] = [1 - 1e-9, 1, 1 + 1e-9].map((x) => exponentialTwoPort(horn, AIR, cutOff * x));
    expect(furthest(below!, at!)).toBeLessThan(1e-8);
    expect(furthest(above!, at!)).toBeLessThan(1e-8);
  });

  it('are reciprocal (seed 63)', () => {
    fc.assert(
      fc.property(size(0.01, 0.1), size(0.01, 0.1), size(0.05, 1), size(20, 2000), (r1, r2, lengthM, f) => {
        const cone = coneTwoPort({ nearRadiusM: r1, farRadiusM: r2, lengthM }, AIR, omegaOf(f));
        const horn = exponentialTwoPort({ nearAreaM2: r1 * r1, farAreaM2: r2 * r2, lengthM }, AIR, omegaOf(f));
        for (const port of [cone, horn]) {
          const scale = 1 + magnitude(port.a) * magnitude(port.d);
          expect(magnitude(subtract(twoPortDeterminant(port), complex(1)))).toBeLessThan(1e-10 * scale);
        }
      }),
      { seed: 63 },
    );
  });
});

describe('tapers with losses', () => {
  const shapes: readonly (readonly [DuctSection, DuctSection])[] = [
    [roundDuct(0.06), roundDuct(0.03)],
    [
      { kind: 'slot', widthM: 0.2, heightM: 0.02 },
      { kind: 'slot', widthM: 0.2, heightM: 0.08 },
    ],
    [
      { kind: 'any', areaM2: 0.016, perimeterM: 0.5 },
      { kind: 'any', areaM2: 0.004, perimeterM: 0.25 },
    ],
  ];

  it('agree with the line equations integrated step by step; twice the slices, a quarter of the error', () => {
    for (const [near, far] of shapes) {
      for (const fluid of [undefined, allardChampouxFluid(800, AIR)]) {
        const duct: Duct = { section: near, farSection: far, lengthM: 1.5, ...(fluid ? { fluid } : {}) };
        const frequencies = Array.from({ length: 60 }, (_, i) => 8 + 12 * i);
        const wanted = frequencies.map((f) => integrated(constantsAlong(duct, AIR, omegaOf(f)), 1.5, 400));
        // Of the largest input impedance of the sweep, as a curve would show it.
        const peak = Math.max(...wanted.map((port) => magnitude(openInputImpedance(port))));
        const error = (slices: number): number =>
          Math.max(
            ...frequencies.map((f, i) => {
              const got = ductTwoPort({ ...duct, slices }, AIR, omegaOf(f));
              return magnitude(subtract(openInputImpedance(got), openInputImpedance(wanted[i]!))) / peak;
            }),
          );
        const [usual, fine] = [error(TAPER_SLICES), error(2 * TAPER_SLICES)];
        expect(usual).toBeLessThan(4e-3);
        // Filled, both are already at the error of the steps.
        if (fluid === undefined) expect(usual / fine).toBeGreaterThan(3);
        else expect(fine).toBeLessThan(1e-4);
      }
    }
  });

  it('cost nothing where nothing tapers or rubs: the same section, and a cone in one slice', () => {
    const same = roundDuct(0.05);
    const uniform = ductTwoPort({ section: same, lengthM: 0.7 }, AIR, omegaOf(150));
    expect(
      furthest(ductTwoPort({ section: same, farSection: same, lengthM: 0.7 }, AIR, omegaOf(150)), uniform),
    ).toBeLessThan(1e-12);
    const cone = coneTwoPort({ nearRadiusM: 0.03, farRadiusM: 0.05, lengthM: 0.4 }, AIR, omegaOf(300));
    const slice = ductTwoPort(
      { section: roundDuct(0.03), farSection: roundDuct(0.05), lengthM: 0.4, slices: 1 },
      LOSSLESS,
      omegaOf(300),
    );
    expect(furthest(slice, cone)).toBeLessThan(1e-6);
  });

  it('turned round, the matrix turns round', () => {
    for (const [near, far] of shapes) {
      const forth = ductTwoPort({ section: near, farSection: far, lengthM: 1 }, AIR, omegaOf(170));
      const back = ductTwoPort({ section: far, farSection: near, lengthM: 1 }, AIR, omegaOf(170));
      expect(furthest(reversedTwoPort(forth), back)).toBeLessThan(1e-10);
      expect(magnitude(subtract(twoPortDeterminant(forth), complex(1)))).toBeLessThan(1e-12);
    }
  });

  it('hold a steady pressure: the closed taper is the compliance of its volume (adiabatic below 1e-3 of friction)', () => {
    const duct: Duct = { section: shapes[1]![0], farSection: shapes[1]![1], lengthM: 1.5 };
    const stiff = (1.2041 * 343.2 ** 2) / (0.2 * 0.05 * 1.5 * omegaOf(0.01));
    expect(apart(closedInputImpedance(ductTwoPort(duct, LOSSLESS, omegaOf(0.01))), complex(0, -stiff))).toBeLessThan(
      1e-6,
    );
  });

  it('refuses sections of two kinds and no slices', () => {
    const mixed: Duct = { section: roundDuct(0.05), farSection: shapes[1]![0], lengthM: 1 };
    expect(() => ductTwoPort(mixed, AIR, 100)).toThrow(RangeError);
    expect(() => ductTwoPort({ ...mixed, farSection: roundDuct(0.02), slices: 0 }, AIR, 100)).toThrow(RangeError);
  });
});
