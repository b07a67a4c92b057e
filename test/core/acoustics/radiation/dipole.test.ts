import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BafflePlace,
  baffleRadiusM,
  dipoleFactorInto,
  dipoleLengthM,
  dipolePressurePa,
  freeDiscAirMassKg,
  fullSpacePressurePa,
  type OpenBaffle,
  openBafflePaths,
  pistonAirMassKg,
  pistonDipoleLengthM,
  standingOnFloor,
  twoSourceFrequenciesHz,
  twoSourceRatio,
  unbaffledMassKg,
} from '../../../../src/core/acoustics/index.ts';
import { magnitude } from '../../../../src/core/math/index.ts';
import { AIR } from '../sweep.ts';
import { discDipole } from './rigidDisc.ts';

const c = AIR.soundSpeedMPerS;
const CENTRE = { xM: 0, yM: 0 };
const disc = { kind: 'round', radiusM: 0.25 } as const;

const factorAt = (
  baffle: OpenBaffle,
  place: BafflePlace,
  offAxisDeg: number,
  kbs: readonly number[],
  pistonRadiusM = 0,
  turnDeg = 0,
) => {
  const angle = (offAxisDeg * Math.PI) / 180;
  const turn = (turnDeg * Math.PI) / 180;
  const direction = {
    xM: Math.sin(angle) * Math.cos(turn),
    yM: Math.sin(angle) * Math.sin(turn),
    zM: Math.cos(angle),
  };
  const omegas = Float64Array.from(kbs, (kb) => (kb * c) / baffleRadiusM(baffle));
  const out = { re: new Float64Array(omegas.length), im: new Float64Array(omegas.length) };
  const paths = openBafflePaths(baffle, place, pistonRadiusM, direction);
  dipoleFactorInto(out, paths, { pistonRadiusM, offAxisDeg }, omegas, c);
  return kbs.map((_, i) => ({ re: out.re[i]!, im: out.im[i]! }));
};
const db = (x: number): number => 20 * Math.log10(x);

describe('dipoleLengthM', () => {
  it('gives 0.318 m for 0.25 m radius, 0.276 m half way out (physics notes, 5.4)', () => {
    expect(dipoleLengthM(disc, CENTRE)).toBeCloseTo(0.318309886, 9);
    expect(dipoleLengthM(disc, { xM: 0.075, yM: -0.1 })).toBeCloseTo(0.275664448, 9);
    expect(dipoleLengthM(disc, { xM: 0.3, yM: 0 })).toBe(0);
  });

  it('averages to 8a/(3π) over a disc that moves as a whole, and to a driver at a point as the piston shrinks', () => {
    expect(pistonDipoleLengthM(disc, CENTRE, 0.25)).toBeCloseTo((8 * 0.25) / (3 * Math.PI), 9);
    expect(pistonDipoleLengthM(disc, { xM: 0.1, yM: 0 }, 1e-6)).toBeCloseTo(dipoleLengthM(disc, { xM: 0.1, yM: 0 }), 9);
  });

  it('follows a panel method for rectangles: square, 1:2 and 1:4 of width 1 (doublet panels, 25 × 37, cosine spacing)', () => {
    for (const [height, x, y, panels, error] of [
      [1, 0, 0, 0.7, 0.012],
      [2, 0, 0, 0.894, 0.012],
      [4, 0, 0, 0.976, 0.012],
      [1, 0.2409, 0.2448, 0.561, 0.05],
      [1, 0.3853, 0.3758, 0.345, 0.05],
      [1, 0, 0.3968, 0.438, 0.05],
      [2, 0.3853, 0, 0.575, 0.05],
      [2, 0, 0.7937, 0.622, 0.05],
      [2, 0.3853, 0.7517, 0.457, 0.05],
      [4, 0, 1.5874, 0.792, 0.05],
      [4, 0.2409, 0.979, 0.829, 0.05],
    ] as const) {
      const found = dipoleLengthM({ kind: 'rectangle', widthM: 1, heightM: height }, { xM: x, yM: y });
      expect(Math.abs(found / panels - 1)).toBeLessThan(error);
    }
  });

  it('of a long strip is its own chord, as in plane flow: 2√(a² − x²)', () => {
    const strip = { kind: 'rectangle', widthM: 0.4, heightM: 400 } as const;
    expect(dipoleLengthM(strip, { xM: 0.1, yM: 0 })).toBeCloseTo(2 * Math.sqrt(0.04 - 0.01), 6);
  });
});

describe('dipolePressurePa', () => {
  it('gives the worked case: 5 l/s, 60 Hz, D 0.318 m at 1 m: 63 mPa, 9.13 dB below one source (physics notes, TOPO-03)', () => {
    const at = { distanceM: 1, offAxisRad: 0 };
    const pressure = dipolePressurePa(0.005, 60, 0.318309886, at, AIR);
    expect(pressure).toBeCloseTo(0.0631521, 7);
    const alone = fullSpacePressurePa(0.005, 60, 1, AIR.densityKgPerM3);
    expect(db(pressure / alone)).toBeCloseTo(-9.12732, 5);
    expect(db(twoSourceRatio(60, 0.318309886, c))).toBeCloseTo(-9.17161, 5);
    expect(dipolePressurePa(0.005, 60, 0.3, { distanceM: 1, offAxisRad: Math.PI / 2 }, AIR)).toBeCloseTo(0, 15);
  });

  it('two sources equal one at c/(6D), peak at c/(2D) and vanish at c/D', () => {
    const { equalHz, peakHz, nullHz } = twoSourceFrequenciesHz(0.3, c);
    expect(twoSourceRatio(equalHz, 0.3, c)).toBeCloseTo(1, 12);
    expect(twoSourceRatio(peakHz, 0.3, c)).toBeCloseTo(2, 12);
    expect(twoSourceRatio(nullHz, 0.3, c)).toBeCloseTo(0, 12);
  });
});

describe('dipoleFactorInto', () => {
  const kbs = [0.2, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];

  it('keeps to the exact disc on axis: 1.6 dB for drivers up to 0.7 radii off centre, 2 dB in notches', () => {
    for (const place of [0, 0.3, 0.5, 0.7]) {
      const found = factorAt(disc, { xM: 0.25 * place, yM: 0 }, 0, kbs);
      kbs.forEach((kb, i) => {
        const exact = magnitude(discDipole(kb, 0, place));
        expect(Math.abs(db(magnitude(found[i]!) / exact))).toBeLessThan(exact < 0.7 ? 2 : 1.6);
      });
    }
  });

  it('keeps to it off axis: 2.8 dB up to 45 degrees, 4.8 dB up to 75', () => {
    for (const [angle, bound] of [
      [30, 2.8],
      [45, 2.8],
      [60, 4.8],
      [75, 4.8],
    ] as const) {
      const found = factorAt(disc, CENTRE, angle, kbs);
      kbs.forEach((kb, i) => {
        const exact = magnitude(discDipole(kb, (angle * Math.PI) / 180, 0));
        expect(Math.abs(db(magnitude(found[i]!) / exact))).toBeLessThan(bound);
      });
    }
  });

  it('is closer than two sources everywhere around the peak, which are 8 dB low there', () => {
    for (const kb of [1, 2, 3]) {
      const exact = magnitude(discDipole(kb, 0, 0));
      const [found] = factorAt(disc, CENTRE, 0, [kb]);
      const sources = twoSourceRatio((kb * c) / (0.25 * 2 * Math.PI), dipoleLengthM(disc, CENTRE), c) / 2;
      expect(Math.abs(db(magnitude(found!) / exact))).toBeLessThan(Math.abs(db(sources / exact)));
    }
    expect(db(discPeak() / 1)).toBeCloseTo(7.85, 1);
  });

  it('rises from jkD cos θ/2 with the closed D, whatever baffle, place, piston and angle (seed 64)', () => {
    const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    const baffle = fc.oneof(
      number(0.1, 0.5).map((radiusM) => ({ kind: 'round', radiusM }) as const),
      fc
        .tuple(number(0.2, 1), number(0.2, 1))
        .map(([widthM, heightM]) => ({ kind: 'rectangle', widthM, heightM }) as const),
    );
    fc.assert(
      fc.property(
        baffle,
        number(-0.06, 0.06),
        number(-0.06, 0.06),
        number(0, 0.03),
        number(0, 85),
        number(0, 360),
        (b, xM, yM, a, angle, turn) => {
          const kb = 1e-4;
          const [found] = factorAt(b, { xM, yM }, angle, [kb], a, turn);
          const lengthM = pistonDipoleLengthM(b, { xM, yM }, a);
          const slope = (kb * lengthM * Math.cos((angle * Math.PI) / 180)) / (2 * baffleRadiusM(b));
          expect(Math.abs(found!.im / slope - 1)).toBeLessThan(1e-5);
          expect(Math.abs(found!.re / slope)).toBeLessThan(2e-3);
        },
      ),
      { seed: 64 },
    );
  });

  it('turns its sign behind the panel, is nothing in its plane and one in front at high frequencies', () => {
    const baffle = { kind: 'rectangle', widthM: 0.5, heightM: 0.9 } as const;
    const place = { xM: 0.03, yM: 0.1 };
    const front = factorAt(baffle, place, 30, [0.3, 3, 20], 0.05);
    const back = factorAt(baffle, place, 150, [0.3, 3, 20], 0.05);
    front.forEach((f, i) => {
      expect(back[i]!.re).toBeCloseTo(-f.re, 9);
      expect(back[i]!.im).toBeCloseTo(-f.im, 9);
    });
    for (const f of factorAt(baffle, place, 90, [0.3, 3, 20], 0.05)) expect(magnitude(f)).toBeLessThan(1e-9);
    const [high] = factorAt(baffle, place, 0, [400]);
    expect(Math.abs(magnitude(high!) - 1)).toBeLessThan(0.15);
  });

  it('keeps a driver a millimetre inside its panel', () => {
    const baffle = { kind: 'rectangle', widthM: 0.5, heightM: 0.9 } as const;
    const ahead = { xM: 0, yM: 0, zM: 1 };
    expect(openBafflePaths(baffle, { xM: 0.3, yM: -2 }, 0, ahead)).toEqual(
      openBafflePaths(baffle, { xM: 0.249, yM: -0.449 }, 0, ahead),
    );
    const round = openBafflePaths(disc, { xM: 0.3, yM: 0.4 }, 0, ahead);
    const nearest = openBafflePaths(disc, { xM: 0.249 * 0.6, yM: 0.249 * 0.8 }, 0, ahead);
    round.extraM.forEach((extra, i) => {
      expect(extra).toBeCloseTo(nearest.extraM[i]!, 12);
    });
  });

  it('on a floor is the panel of twice the height', () => {
    const { baffle, source } = standingOnFloor({ kind: 'rectangle', widthM: 0.5, heightM: 0.9 }, { xM: 0, yM: 0.6 });
    expect(baffle).toEqual({ kind: 'rectangle', widthM: 0.5, heightM: 1.8 });
    expect(dipoleLengthM(baffle, source)).toBeGreaterThan(
      dipoleLengthM({ kind: 'rectangle', widthM: 0.5, heightM: 0.9 }, { xM: 0, yM: 0.15 }),
    );
  });
});

const discPeak = (): number => magnitude(discDipole(2.45, 0, 0));

describe('air load', () => {
  it('of a 200 mm disc is 3.211 g free and 6.422 g in an infinite baffle (physics notes, TOPO-04)', () => {
    expect(freeDiscAirMassKg(0.1, AIR.densityKgPerM3)).toBeCloseTo(0.00321093333, 10);
    expect(pistonAirMassKg(0.1, AIR.densityKgPerM3, 2)).toBeCloseTo(0.00642186667, 10);
  });

  it('is the integral of the potential jump: ρ ∫ D dS over the disc', () => {
    const steps = 20_000;
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const r = (0.1 * (i + 0.5)) / steps;
      sum += 2 * Math.PI * r * (0.1 / steps) * dipoleLengthM({ kind: 'round', radiusM: 0.1 }, { xM: r, yM: 0 });
    }
    expect((AIR.densityKgPerM3 * sum) / freeDiscAirMassKg(0.1, AIR.densityKgPerM3)).toBeCloseTo(1, 5);
  });

  it('takes a driver out of the baffle and back, and refuses to take more than there is', () => {
    const out = unbaffledMassKg(0.03, 0.1, AIR.densityKgPerM3);
    expect(0.03 - out).toBeCloseTo(0.00321093333, 10);
    expect(unbaffledMassKg(out, 0.1, AIR.densityKgPerM3, -1)).toBeCloseTo(0.03, 15);
    expect(() => unbaffledMassKg(0.003, 0.1, AIR.densityKgPerM3)).toThrow(RangeError);
  });
});
