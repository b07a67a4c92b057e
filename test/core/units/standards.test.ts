import { describe, expect, it } from 'vitest';
import { levelFor1WDb, USUAL_DRIVE_V, voltageFor1WV } from '../../../src/core/units/characteristicSensitivity.ts';
import { EFFECTIVE_RANGE } from '../../../src/core/units/effectiveRange.ts';
import { DB_PER_DECADE, DECADES_PER_DECADE, POLAR_RANGE_DB } from '../../../src/core/units/plotProportions.ts';
import { greatestRatedImpedanceOhm, mayBeRated } from '../../../src/core/units/ratedImpedance.ts';
import { bandEdgesHz, midbandHz, nominalThirdOctaveHz, OCTAVE_RATIO } from '../../../src/core/units/standardBands.ts';

describe('standard bands (IEC 61260-1, ISO 266)', () => {
  it('has exact midbands within 1.3 % of the nominal ones and ten to the decade', () => {
    for (let n = -20; n <= 13; n++) {
      expect(Math.abs(midbandHz(n, 3) / nominalThirdOctaveHz(n) - 1)).toBeLessThan(0.013);
      expect(midbandHz(n + 10, 3) / midbandHz(n, 3)).toBeCloseTo(10, 12);
    }
  });
  it('has bands that touch', () => {
    for (const fraction of [1, 2, 3, 6, 12, 24])
      for (const n of [-7, 0, 5])
        expect(bandEdgesHz(midbandHz(n, fraction), fraction)[1]).toBeCloseTo(
          bandEdgesHz(midbandHz(n + 1, fraction), fraction)[0],
          8,
        );
  });
  it('begins at 1000 Hz with a midband for odd, with an edge for even fractions', () => {
    expect(midbandHz(0, 3)).toBe(1000);
    expect(bandEdgesHz(midbandHz(0, 6), 6)[0]).toBeCloseTo(1000, 9);
    expect(midbandHz(-9, 3)).toBeCloseTo(125.8925, 4);
    expect(OCTAVE_RATIO).toBeCloseTo(1.99526, 5);
  });
  it('names the nominal frequencies as ISO 266 prints them', () => {
    expect([-15, -12, -2, 0, 5, 13].map(nominalThirdOctaveHz)).toEqual([31.5, 63, 630, 1000, 3150, 20000]);
  });
});

describe('ratings and scales', () => {
  it('allows a rated impedance of 1.25 times the least one', () => {
    // IEC 60268-5 as trade dictionaries quote it: 6.4 Ω for 8, 3.2 Ω for 4.
    expect(mayBeRated(6.4, 8)).toBe(true);
    expect(mayBeRated(6.39, 8)).toBe(false);
    expect(mayBeRated(3.2, 4)).toBe(true);
    expect(greatestRatedImpedanceOhm(6.4)).toBeCloseTo(8, 12);
    for (const least of [2.7, 3.3, 5.1]) expect(mayBeRated(least, greatestRatedImpedanceOhm(least))).toBe(true);
  });
  it('turns a level with 2.83 V into one with 1 W', () => {
    expect(levelFor1WDb(88, 4)).toBeCloseTo(84.9897, 4);
    expect(levelFor1WDb(88, 8)).toBeCloseTo(88, 12);
    expect(voltageFor1WV(8)).toBe(USUAL_DRIVE_V);
    // Independent: half the power into half the resistance at the same voltage.
    expect(88 - levelFor1WDb(88, 4)).toBeCloseTo(10 * Math.log10(USUAL_DRIVE_V ** 2 / 4), 12);
  });
  it('keeps the proportions of IEC 60263:2020 and the range of IEC 60268-5', () => {
    expect(DB_PER_DECADE).toEqual([10, 20, 25, 50]);
    expect(DECADES_PER_DECADE).toEqual([0.5, 1, 1.25, 2.5]);
    expect(POLAR_RANGE_DB).toEqual({ absolute: [60, 30], relative: 30 });
    expect(EFFECTIVE_RANGE.ignoredTroughOctaves).toBeCloseTo(0.1111, 4);
  });
});
