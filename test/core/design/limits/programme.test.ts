import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bandMeans,
  programmeMean,
  programmePowerW,
  programmeShares,
  programmeSharesBetween,
  programmeTotal,
  programmeVoltageV,
  USUAL_CREST_DB,
  USUAL_PROGRAMME,
} from '../../../../src/core/design/limits/index.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import { interpolateLogInto } from '../../../../src/core/math/index.ts';

const grid = sweepGrid(10, 20000, 1000);

describe('usual programme', () => {
  it('lies on the straight lines between its anchors, to the rounding of the table', () => {
    const anchorsHz = [20, 31.5, 50, 100, 160, 630, 1000, 2000, 4000, 8000, 20000];
    const anchorsDb = [-13.5, -7.4, -3.3, -0.5, 0, 0, -0.75, -2, -5, -10, -20];
    const centres = Float64Array.from(USUAL_PROGRAMME, ({ centreHz }) => centreHz);
    const lines = new Float64Array(centres.length);
    interpolateLogInto(lines, centres, anchorsHz, anchorsDb);
    USUAL_PROGRAMME.forEach(({ levelDb }, i) => {
      expect(Math.abs(levelDb - lines[i]!)).toBeLessThan(0.15);
    });
    expect([centres[0], centres[17], centres.at(-1)]).toEqual([20, 1000, 20000]);
  });
  it('leaves 10 to 15 % above 2.5 kHz, as simulated programme is said to', () => {
    // "With a 2-3 kHz split about 10-15 % reaches the tweeter branch": from memory.
    const [, high] = programmeSharesBetween(USUAL_PROGRAMME, [2500]);
    expect(high).toBeGreaterThan(0.1);
    expect(high).toBeLessThan(0.15);
  });
  it('shares add up to 1 however it is cut', () => {
    for (const edges of [[], [300], [300, 300], [20, 450, 2800, 30000]]) {
      const shares = programmeSharesBetween(USUAL_PROGRAMME, edges);
      expect(shares).toHaveLength(edges.length + 1);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    }
    const bands = programmeShares(USUAL_PROGRAMME).map((share) => share * programmeTotal(USUAL_PROGRAMME));
    bands.forEach((power, i) => {
      expect(10 * Math.log10(power)).toBeCloseTo(USUAL_PROGRAMME[i]!.levelDb, 10);
    });
  });
});

describe('programme power', () => {
  it('100 W sine at clipping and a 12 dB crest: 12.6 W', () => {
    // Peak power 200 W over 10^1.2; derived from the definition of the crest factor.
    const power = new Float64Array(grid.length).fill(100);
    expect(programmePowerW(power, grid, USUAL_PROGRAMME, USUAL_CREST_DB)).toBeCloseTo(12.62, 2);
    expect(programmeVoltageV(1, 20 * Math.log10(Math.SQRT2))).toBeCloseTo(1, 12);
  });

  it('of a power straight over ln f is that at the bands’ exact centres', () => {
    const slope = grid.map((hz) => 3 + 2 * Math.log(hz / 1000));
    const means = bandMeans(slope, grid, USUAL_PROGRAMME);
    // Bands that end beyond the sweep, where the last value is held, are left out.
    means.slice(0, -1).forEach((mean, i) => {
      expect(mean).toBeCloseTo(3 + 2 * Math.log(10 ** ((i - 17) / 10)), 9);
    });
    expect(means.at(-1)).toBeLessThan(3 + 2 * Math.log(20000 / 1000));
  });

  it('agrees with a finer sum of sines, for a tweeter behind a capacitor', () => {
    // Independent: |H|² in closed form at 4000 points with the band's level spread evenly over ln f, no trapezoids.
    const power = (hz: number): number => {
      const x = 2 * Math.PI * hz * 6.5 * 4.7e-6;
      return (100 / 6.5) * (x ** 2 / (1 + x ** 2));
    };
    const levels = USUAL_PROGRAMME.map(({ levelDb }) => 10 ** (levelDb / 10));
    const total = levels.reduce((sum, level) => sum + level, 0);
    let expected = 0;
    levels.forEach((level, i) => {
      for (let k = 0; k < 400; k++) {
        const hz = 1000 * 10 ** ((i - 17) / 10 + (k + 0.5 - 200) / 4000);
        expected += ((level / total) * power(hz)) / 400;
      }
    });
    const found = programmePowerW(grid.map(power), grid, USUAL_PROGRAMME, 20 * Math.log10(Math.SQRT2));
    // The sweep ends at 20 kHz, inside the last band: a thousandth at most.
    expect(Math.abs(found / expected - 1)).toBeLessThan(1e-3);
    const centres = programmeMean(
      USUAL_PROGRAMME.map(({ centreHz }) => power(centreHz)),
      USUAL_PROGRAMME,
    );
    // One sine at each centre is coarser.
    expect(Math.abs(centres / expected - 1)).toBeLessThan(1e-2);
  });

  it('lies between the least and the greatest power of the sweep, and grows with it (seed 78)', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 50, noNaN: true }), { minLength: 60, maxLength: 60 }), (list) => {
        const coarse = sweepGrid(15, 21000, list.length);
        const powers = Float64Array.from(list);
        const mean = programmePowerW(powers, coarse, USUAL_PROGRAMME, 20 * Math.log10(Math.SQRT2));
        expect(mean).toBeGreaterThanOrEqual(Math.min(...list) - 1e-9);
        expect(mean).toBeLessThanOrEqual(Math.max(...list) + 1e-9);
        const more = powers.map((p) => 2 * p + 1);
        expect(programmePowerW(more, coarse, USUAL_PROGRAMME, 20 * Math.log10(Math.SQRT2))).toBeCloseTo(
          2 * mean + 1,
          9,
        );
      }),
      { seed: 78 },
    );
  });
});
