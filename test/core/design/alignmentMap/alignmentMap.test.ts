import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DriverParameters, driverFigures, portLengthForTuning } from '../../../../src/core/acoustics/index.ts';
import {
  alignmentMap,
  type MapInput,
  mapAxes,
  sealedCurve,
  ventedFigures,
} from '../../../../src/core/design/alignmentMap/index.ts';
import { sealedForQtc } from '../../../../src/core/design/alignments/sealedAlignment.ts';
import { sealedMotion } from '../../../../src/core/design/alignments/sealedMotion.ts';
import { word } from '../../../../src/core/messages/index.ts';
import { AIR } from '../../acoustics/sweep.ts';

const driver: DriverParameters = {
  reOhm: 5.6,
  leH: 0,
  semiInductance: null,
  blTm: 9.2,
  mmsKg: 0.03,
  cmsMPerN: 7e-4,
  rmsKgPerS: 1.5,
  sdM2: 0.022,
};
const numbers = driverFigures(driver, AIR);
const input = (changes: Partial<MapInput> = {}): MapInput => ({
  driver,
  alike: 1,
  losses: { leak: { q: 7, atHz: 40 }, absorption: { q: 100, atHz: 40 }, port: { q: 100, atHz: 40 } },
  air: AIR,
  driveV: 2.83,
  seriesOhm: 0.2,
  port: { shape: { kind: 'round', diameterM: 0.07 }, innerEnd: 'free', outerEnd: 'flanged', count: 1 },
  ...mapAxes(numbers, null, 12),
  ...changes,
});
const mapOf = (changes: Partial<MapInput> = {}) => {
  const found = alignmentMap(input(changes));
  if (!found.ok) throw new Error(found.problems[0]!.code);
  return found.value;
};

describe('alignmentMap', () => {
  it('lies volume by volume, tuning by tuning, and gives the port lengths of portLengthForTuning', () => {
    const map = mapOf();
    const { port } = input();
    let short = 0;
    map.volumesM3.forEach((volumeM3, i) => {
      map.tuningsHz.forEach((tuningHz, j) => {
        const cell = i * map.tuningsHz.length + j;
        const length = portLengthForTuning(port, tuningHz, volumeM3, AIR.soundSpeedMPerS);
        expect(map.portLengthM.masked[cell]).toBe(length.ok ? 0 : 1);
        expect(map.portLengthM.values[cell]!).toBeCloseTo(length.ok ? length.value : 0, 12);
        expect(map.portSpeedPeakMPerS.masked[cell]).toBe(length.ok ? 0 : 1);
        if (!length.ok) short++;
      });
    });
    expect(short).toBeGreaterThan(0);
  });

  it('doubles excursion and port speed with the drive, and counts two drivers as one of twice the area', () => {
    const [one, loud, pair] = [mapOf(), mapOf({ driveV: 5.66 }), mapOf({ alike: 2 })];
    const doubled = mapOf({
      alike: 1,
      driver: { ...driver, mmsKg: 0.06, rmsKgPerS: 3, sdM2: 0.044, cmsMPerN: 3.5e-4, blTm: 18.4, reOhm: 11.2 },
      seriesOhm: 0.4,
      driveV: 5.66,
    });
    for (let cell = 0; cell < one.cutOffHz.values.length; cell++) {
      expect(loud.excursionPeakM.values[cell]! / one.excursionPeakM.values[cell]!).toBeCloseTo(2, 12);
      expect(loud.cutOffHz.values[cell]).toBe(one.cutOffHz.values[cell]);
      expect(pair.cutOffHz.values[cell]! / doubled.cutOffHz.values[cell]!).toBeCloseTo(1, 9);
      expect(pair.excursionPeakM.values[cell]! / doubled.excursionPeakM.values[cell]!).toBeCloseTo(1, 9);
      if (one.portLengthM.masked[cell] === 1) continue;
      expect(loud.portSpeedPeakMPerS.values[cell]! / one.portSpeedPeakMPerS.values[cell]!).toBeCloseTo(2, 12);
      expect(pair.portSpeedPeakMPerS.values[cell]! / doubled.portSpeedPeakMPerS.values[cell]!).toBeCloseTo(1, 9);
    }
  });

  it('nears the sealed curve as the port closes: tuning towards zero', () => {
    const volumesM3 = Float64Array.of(0.01, 0.03, 0.1);
    const sealed = sealedCurve({ ...input(), volumesM3 });
    if (!sealed.ok) throw new Error('no sealed curve');
    const none = { leak: null, absorption: null, port: null };
    const map = mapOf({ volumesM3, tuningsHz: Float64Array.of(0.05), losses: none });
    for (let i = 0; i < 3; i++) {
      expect(map.cutOffHz.values[i]! / sealed.value.cutOffHz[i]!).toBeCloseTo(1, 4);
      expect(map.rippleDb.values[i]!).toBeCloseTo(sealed.value.peakDb[i]!, 3);
      expect(map.excursionPeakM.values[i]! / sealed.value.excursionPeakM[i]!).toBeCloseTo(1, 4);
    }
  });

  it('refuses what cannot be read, in a sentence', () => {
    for (const changes of [
      { driver: { ...driver, blTm: 0 } },
      { driver: { ...driver, mmsKg: Number.NaN } },
      { seriesOhm: -1 },
      { volumesM3: Float64Array.of(0.01, -0.02) },
      { losses: { leak: { q: 0, atHz: 40 }, absorption: null, port: null } },
      { port: { ...input().port, count: 0 } },
    ]) {
      const found = alignmentMap(input(changes));
      expect(found.ok).toBe(false);
      if (!found.ok) expect(word(found.problems[0]!).sentence).toMatch(/not above zero/);
    }
  });

  it('never throws and never holds NaN or infinity, whatever the driver and the box (seed 104)', () => {
    const wild = fc.oneof(
      { weight: 6, arbitrary: fc.double({ min: -8, max: 8, noNaN: true }).map((e) => 10 ** e) },
      { weight: 1, arbitrary: fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-300, 1e300) },
    );
    const any = fc.record({
      reOhm: wild,
      blTm: wild,
      mmsKg: wild,
      cmsMPerN: wild,
      rmsKgPerS: wild,
      sdM2: wild,
      q: wild,
      atHz: wild,
      driveV: wild,
      seriesOhm: wild,
      diameterM: wild,
      volumeM3: wild,
      tuningHz: wild,
    });
    let read = 0;
    fc.assert(
      fc.property(any, ({ q, atHz, driveV, seriesOhm, diameterM, volumeM3, tuningHz, ...numbers }) => {
        const one = input({
          driver: { ...driver, ...numbers },
          losses: { leak: { q, atHz }, absorption: { q, atHz: null }, port: { q, atHz } },
          driveV,
          seriesOhm,
          port: { ...input().port, shape: { kind: 'round', diameterM } },
          volumesM3: Float64Array.of(volumeM3, 2 * volumeM3),
          tuningsHz: Float64Array.of(tuningHz, 3 * tuningHz),
        });
        const map = alignmentMap(one);
        if (map.ok) {
          read++;
          const { cutOffHz, rippleDb, excursionPeakM, portLengthM, portSpeedPeakMPerS } = map.value;
          for (const grid of [cutOffHz, rippleDb, excursionPeakM, portLengthM, portSpeedPeakMPerS]) {
            expect(grid.values.every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
          }
        }
        const sealed = sealedCurve(one);
        if (sealed.ok)
          for (const values of Object.values(sealed.value)) expect(values.every(Number.isFinite)).toBe(true);
      }),
      { seed: 104, numRuns: 600 },
    );
    expect(read).toBeGreaterThan(50);
  });
});

describe('sealedCurve', () => {
  it('holds the published box and the closed formula of motion', () => {
    const b2 = sealedForQtc(numbers, Math.SQRT1_2);
    if (!b2.ok) throw new Error('no B2 box');
    const found = sealedCurve({ ...input({ seriesOhm: 0 }), volumesM3: Float64Array.of(b2.value.volumeM3, 0.012) });
    if (!found.ok) throw new Error('no sealed curve');
    expect(found.value.qtc[0]!).toBeCloseTo(Math.SQRT1_2, 12);
    expect(found.value.cutOffHz[0]! / found.value.fcHz[0]!).toBeCloseTo(1, 9);
    expect(found.value.peakDb[0]!).toBeLessThan(1e-9);
    for (const [i, volumeM3] of found.value.volumesM3.entries()) {
      let most = 0;
      for (let f = found.value.cutOffHz[i]!; f < 500; f *= 1.001) {
        most = Math.max(most, sealedMotion(driver, { volumeM3, distanceM: 1 }, 2.83, f, AIR).excursionPeakM);
      }
      // A grid of 0.1 % of a resonance of Q about 1: the top is met within 1e-5.
      expect(Math.abs(most / found.value.excursionPeakM[i]! - 1)).toBeLessThan(1e-5);
    }
  });
});

describe('mapAxes', () => {
  it('is logarithmic, holds the published boxes and the present one, and is not carried off by an absurd one', () => {
    const axes = mapAxes(numbers, { volumeM3: numbers.vasM3 * 9, tuningHz: 200 }, 40);
    for (const values of [axes.volumesM3, axes.tuningsHz]) {
      const ratio = values[1]! / values[0]!;
      for (let i = 1; i < values.length; i++) expect(values[i]! / values[i - 1]!).toBeCloseTo(ratio, 9);
    }
    expect(axes.volumesM3.at(-1)!).toBeGreaterThan(numbers.vasM3 * 9);
    expect(axes.tuningsHz.at(-1)!).toBeGreaterThan(200);
    expect(axes.volumesM3[0]!).toBeCloseTo(numbers.vasM3 / 30, 12);
    expect(mapAxes(numbers, { volumeM3: 1e9, tuningHz: 30 }, 40).volumesM3.at(-1)!).toBeLessThan(numbers.vasM3 * 150);
  });

  it('has figures everywhere on the usual map', () => {
    const map = mapOf(mapAxes(numbers, null, 20));
    expect(map.cutOffHz.masked.some((masked) => masked === 1)).toBe(false);
    expect(
      ventedFigures({ h: 1, alpha: Number.MAX_VALUE, qt: 1e-200, losses: { leak: 0, absorption: 0, port: 0 } }, 1),
    ).toBeNull();
  });
});
