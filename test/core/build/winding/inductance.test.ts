import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MU0, ringMutualH } from '../../../../src/core/build/coils/index.ts';
import {
  brooksFor,
  brooksInductanceH,
  brooksSection,
  currentSheetH,
  estimateError,
  inductanceFactor,
  sectionInductanceH,
  turnInductanceH,
  turnsInductanceH,
  type WindingSection,
  wheelerMultilayerH,
  wheelerSolenoidH,
} from '../../../../src/core/build/winding/index.ts';

/** Mean of ring inductances over the section, cut into squares or nearly so; its own term with the mean distance within a square. */
function ringSum({ meanRadiusM, lengthM, depthM, turns }: WindingSection, along: number, deep: number): number {
  const [dz, dr] = [lengthM / along, depthM / deep];
  const radius = (k: number) => meanRadiusM - depthM / 2 + (k + 0.5) * dr;
  // Mean distance within a rectangle, exp(mean of ln), is 0.2235 (a + b) for all shapes (Grover 1946, from memory).
  const own = 0.2235 * (dz + dr);
  let sum = 0;
  for (let k = 0; k < deep; k++) {
    for (let other = 0; other < deep; other++) {
      for (let apart = 0; apart < along; apart++) {
        const times = apart === 0 ? along : 2 * (along - apart);
        const mutual =
          apart === 0 && k === other
            ? MU0 * radius(k) * (Math.log((8 * radius(k)) / own) - 2)
            : ringMutualH(radius(k), radius(other), apart * dz);
        sum += times * mutual;
      }
    }
  }
  return (sum * turns ** 2) / (along * deep) ** 2;
}

const sections = fc
  .record({
    length: fc.double({ min: 0.3, max: 3, noNaN: true }),
    depth: fc.double({ min: 0.2, max: 1.2, noNaN: true }),
  })
  .map(({ length, depth }) => ({ meanRadiusM: 0.02, lengthM: 0.02 * length, depthM: 0.02 * depth, turns: 200 }));

describe('inductance of an air coil', () => {
  it('of the Brooks shape is Grover’s 1.6994 µH per metre of mean radius and Brooks’s 2.029 μ0 c within print', () => {
    const section = brooksSection(0.012, 200);
    const henry = sectionInductanceH(section);
    expect(Math.abs((henry / (section.meanRadiusM * 200 ** 2)) * 1e6 - 1.6994)).toBeLessThan(5e-5);
    expect(Math.abs(inductanceFactor(henry, section) - 2.029)).toBeLessThan(6e-4);
    expect(brooksInductanceH(0.012, 200) / henry).toBeCloseTo(1, 5);
  });
  it('agrees with Wheeler within the 1 % that he states, both kinds of coil', () => {
    for (const [meanRadiusM, lengthM, depthM] of [
      [0.02, 0.014, 0.012],
      [0.025, 0.03, 0.02],
      [0.02, 0.02, 0.016],
    ] as const) {
      const section = { meanRadiusM, lengthM, depthM, turns: 250 };
      expect(Math.abs(estimateError(wheelerMultilayerH(section), sectionInductanceH(section)))).toBeLessThan(0.01);
    }
    for (const lengthM of [0.02, 0.05, 0.2]) {
      const coil = { radiusM: 0.02, lengthM, turns: 50 };
      expect(Math.abs(estimateError(wheelerSolenoidH(coil), currentSheetH(coil)))).toBeLessThan(0.01);
    }
  });
  it('agrees with a sum over rings of cut-up sections, extrapolated (seed 91)', () => {
    fc.assert(
      fc.property(sections, (section) => {
        const cells = Math.round((14 * section.lengthM) / section.depthM);
        const along = Math.max(4, Math.min(40, cells));
        const [coarse, fine] = [ringSum(section, along, 14), ringSum(section, 2 * along, 28)];
        // The error of the cells falls with their square; what is left is some 1e-4 where they are not square.
        expect(Math.abs((4 * fine - coarse) / 3 / sectionInductanceH(section) - 1)).toBeLessThan(3e-4);
      }),
      { seed: 91, numRuns: 6 },
    );
  });
  it('grows with the square of turns and with size, and comes to the sheet of current as the depth goes', () => {
    const section = { meanRadiusM: 0.02, lengthM: 0.03, depthM: 0.01, turns: 100 };
    const henry = sectionInductanceH(section);
    expect(sectionInductanceH({ ...section, turns: 300 }) / henry).toBeCloseTo(9, 10);
    const larger = { meanRadiusM: 0.06, lengthM: 0.09, depthM: 0.03, turns: 100 };
    expect(sectionInductanceH(larger) / henry).toBeCloseTo(3, 9);
    const sheet = currentSheetH({ radiusM: 0.02, lengthM: 0.03, turns: 100 });
    const short = [0.001, 0.0005].map((depthM) => 1 - sectionInductanceH({ ...section, depthM }) / sheet);
    expect(short[1]).toBeLessThan(0.02);
    expect(short[0]! / short[1]!).toBeCloseTo(2, 1);
  });
  it('of a long solenoid is μ0 N² A/l less 8a/(3πl), Nagaoka’s first terms', () => {
    const [radiusM, lengthM] = [0.01, 0.5];
    const infinite = (MU0 * Math.PI * radiusM ** 2) / lengthM;
    const ratio = currentSheetH({ radiusM, lengthM, turns: 1 }) / infinite;
    // The next term is (a/l)²/2.
    expect(Math.abs(ratio - (1 - (8 * radiusM) / (3 * Math.PI * lengthM) + (radiusM / lengthM) ** 2 / 2))).toBeLessThan(
      1e-5,
    );
  });
  it('turn by turn is that of the section with the correction for round insulated wire of Rosa and Grover (from memory)', () => {
    const [pitchM, wireM, side] = [1.08e-3, 1e-3, 13];
    const turns = side * side;
    const layout = { innerRadiusM: side * pitchM, pitchM, turnsPerLayer: side, turns };
    const section = brooksSection(side * pitchM, turns);
    const correction = MU0 * section.meanRadiusM * turns * (Math.log(pitchM / wireM) + 0.138 + 0.017);
    const expected = sectionInductanceH(section) + correction;
    // Centres of cells stand for their means, an error of (pitch/radius)²/12 or so of the whole.
    expect(Math.abs(turnsInductanceH(layout, wireM) / expected - 1)).toBeLessThan(5e-4);
  });
  it('of one turn and of two follows from its own and mutual inductance', () => {
    const one = { innerRadiusM: 0.0495, pitchM: 0.001, turnsPerLayer: 2, turns: 1 };
    expect(turnsInductanceH(one, 0.0009)).toBeCloseTo(turnInductanceH(0.05, 0.00045), 15);
    const two = turnsInductanceH({ ...one, turns: 2 }, 0.0009);
    expect(two).toBeCloseTo(2 * turnInductanceH(0.05, 0.00045) + 2 * ringMutualH(0.05, 0.05, 0.001), 15);
  });
  it('is designed backwards and refuses shapes outside its range (seed 92)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 0.05, noNaN: true }),
        fc.double({ min: 5e-4, max: 3e-3, noNaN: true }),
        (henry, pitchM) => {
          const section = brooksFor(henry, pitchM);
          expect(brooksInductanceH(section.lengthM, section.turns) / henry).toBeCloseTo(1, 9);
          expect((section.lengthM * section.depthM) / (section.turns * pitchM ** 2)).toBeCloseTo(1, 9);
        },
      ),
      { seed: 92 },
    );
    expect(() => sectionInductanceH({ meanRadiusM: 0.02, lengthM: 0.02, depthM: 0.0002, turns: 1 })).toThrow(
      RangeError,
    );
    expect(() => sectionInductanceH({ meanRadiusM: 0.02, lengthM: 0.02, depthM: 0.05, turns: 1 })).toThrow(RangeError);
  });
});
