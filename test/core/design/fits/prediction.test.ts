import { describe, expect, it } from 'vitest';
import {
  fitUncertain,
  predictionCheck,
  type SpeakerUncertainty,
  speakerPrediction,
  type UncertainValue,
} from '../../../../src/core/design/fits/index.ts';
import { randomStream } from '../../../../src/core/math/index.ts';
import { logGrid } from '../../../../src/core/measured/index.ts';
import { levelsDbSpl, type SpeakerModel, simulate } from '../../../../src/core/speaker/index.ts';
import { twoWay as twoWayModel } from '../../speaker/fixture.ts';
import { expectValue } from './madeSweep.ts';

const frequenciesHz = logGrid(200, 10000, 12);

/** Woofer and tweeter through first-order filters (C in farad, L in henry, 8 Ω), the woofer later by its depth. */
const twoWay = (depthM: number, levelDb: number, farad: number, henry: number): Float64Array =>
  frequenciesHz.map((hz) => {
    const omega = 2 * Math.PI * hz;
    const x = omega * farad * 8;
    const y = (omega * henry) / 8;
    const tweeter = { re: (x * x) / (1 + x * x), im: x / (1 + x * x) };
    const angle = (-omega * depthM) / 343.2;
    const size = 1 / Math.hypot(1, y);
    const turn = angle - Math.atan(y);
    return (
      levelDb + 20 * Math.log10(Math.hypot(tweeter.re + size * Math.cos(turn), tweeter.im + size * Math.sin(turn)))
    );
  });
const NOMINAL = [0.02, 88, 10e-6, 0.6e-3] as const;
const values: UncertainValue[] = [
  { id: 'depth', nominal: NOMINAL[0], spread: { kind: 'absolute', sd: 0.01 } },
  { id: 'level', nominal: NOMINAL[1], spread: { kind: 'absolute', sd: 2 } },
  { id: 'C1', nominal: NOMINAL[2], spread: { kind: 'relative', sd: 0.05 } },
  { id: 'L1', nominal: NOMINAL[3], spread: { kind: 'relative', sd: 0.05 } },
];
const predict = (v: Float64Array): Float64Array => twoWay(v[0]!, v[1]!, v[2]!, v[3]!);
const roughened = (levels: Float64Array, sd: number, seed: number): Float64Array => {
  const random = randomStream(seed);
  return levels.map((db) => db + sd * random.normal());
};

describe('fitUncertain', () => {
  it('finds what was moved, and leaves what was not (seeds 1 to 20)', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const fit = fitUncertain(roughened(twoWay(0.032, 86.5, 10e-6, 0.6e-3), 0.2, seed), predict, values, 0.2);
      const [depth, level, c, l] = fit.values;
      expect(fit.converged).toBe(true);
      // Four of the deviations that the fit itself says remain.
      for (const [moved, truth, spread] of [
        [depth!, 0.032, 0.01],
        [level!, 86.5, 2],
        [c!, 10e-6, 0.05 * 10e-6],
        [l!, 0.6e-3, 0.05 * 0.6e-3],
      ] as const)
        expect(Math.abs(moved.value - truth)).toBeLessThan(4 * moved.remaining * spread);
      expect(fit.beforeDb).toBeGreaterThan(1);
      expect(fit.afterDb).toBeLessThan(0.27);
      expect(depth!.remaining).toBeLessThan(0.3);
    }
  });
  it('leaves where it is what the measurement does not show', () => {
    const unseen: UncertainValue = { id: 'none', nominal: 5, spread: { kind: 'relative', sd: 0.1 } };
    const fit = fitUncertain(roughened(predict(Float64Array.from(NOMINAL)), 0.2, 4), predict, [...values, unseen], 0.2);
    expect(fit.values[4]).toMatchObject({ value: 5, movedBySds: 0, remaining: expect.closeTo(1, 6) });
  });
  it('divides among values that act alike by the squares of their spreads', () => {
    const alike: UncertainValue[] = [2, 1].map((sd) => ({ id: `${sd}`, nominal: 0, spread: { kind: 'absolute', sd } }));
    const flat = (v: Float64Array): number[] => new Array<number>(400).fill(v[0]! + v[1]!);
    const { values: parts } = fitUncertain(new Array<number>(400).fill(3), flat, alike, 0.1);
    // Least (x/2)² + y² with x + y = 3; the misfit's weight of 400/0.01 leaves 1e-4 of it.
    expect(parts[0]!.value).toBeCloseTo(2.4, 3);
    expect(parts[1]!.value).toBeCloseTo(0.6, 3);
  });
  it('shows by its spreads that a part is wrong, not off', () => {
    const fit = fitUncertain(twoWay(0.02, 88, 15e-6, 0.6e-3), predict, values, 0.2);
    expect(Math.max(...fit.values.map(({ movedBySds }) => Math.abs(movedBySds)))).toBeGreaterThan(3);
  });
  it('moves nothing where the prediction is met', () => {
    const fit = fitUncertain(predict(Float64Array.from(NOMINAL)), predict, values, 0.2);
    for (const { movedBySds } of fit.values) expect(Math.abs(movedBySds)).toBeLessThan(1e-6);
    expect(fit.afterDb).toBeLessThan(1e-6);
    expect(() => fitUncertain([1, 2], predict, values, 0.2)).toThrow(RangeError);
  });
});

describe('predictionCheck', () => {
  const band = { frequenciesHz: [100, 20000], belowDb: [1.5, 1.5], aboveDb: [0.5, 0.5] };
  const curve = (levelsDb: ArrayLike<number>) => ({ frequenciesHz, levelsDb });
  const levels = twoWay(...NOMINAL);
  const predicted = curve(levels);
  const shifted = (db: number) => curve(levels.map((level) => level + db));
  const options = { fraction: null, alignHz: null };
  it('knows above from below', () => {
    const check = (db: number) => predictionCheck(shifted(db), predicted, band, options)!;
    expect(check(0.4)).toMatchObject({ insideShare: 1, beyond: { within: true } });
    expect(check(-1.4)).toMatchObject({ insideShare: 1, beyond: { within: true } });
    expect(check(-0.6).insideShare).toBe(1);
    expect(check(0.6)).toMatchObject({ insideShare: 0, beyond: { within: true } });
    const loud = check(3);
    expect(loud.beyond.within).toBe(false);
    // 3 dB less 0.5 of tolerance.
    expect(loud.beyond.worst!.differenceDb).toBeCloseTo(2.5, 9);
    expect(check(-3).beyond.worst!.differenceDb).toBeCloseTo(-1.5, 9);
  });
  it('forgives a level that is not known', () => {
    const aligned = predictionCheck(shifted(12), predicted, band, { fraction: null, alignHz: [300, 3000] })!;
    expect(aligned.difference.alignedByDb).toBeCloseTo(12, 9);
    expect(aligned.insideShare).toBe(1);
    expect(predictionCheck({ frequenciesHz: [20, 30], levelsDb: [1, 1] }, predicted, band, options)).toBeNull();
  });
});

describe('speakerPrediction', () => {
  const grid = logGrid(100, 12000, 12);
  const doubts: SpeakerUncertainty[] = [
    { kind: 'level', sdDb: 2 },
    { kind: 'depth', partId: 'LS1', sdM: 0.01 },
    { kind: 'part', partId: 'C2', relativeSd: 0.05 },
    { kind: 'part', partId: 'L1', relativeSd: 0.05 },
  ];
  it('is the nominal speaker where nothing has moved, and finds what was moved (noise of seed 6)', () => {
    const { uncertain, predict } = expectValue(speakerPrediction(twoWayModel, grid, doubts));
    const nominal = predict(Float64Array.from(uncertain, (value) => value.nominal));
    expect(Array.from(nominal)).toEqual([...levelsDbSpl(expectValue(simulate(twoWayModel, grid)).sum)]);
    // Built by hand: the woofer 12 mm further back, C2 8 % large, the microphone 1.5 dB loud.
    const built: SpeakerModel = {
      ...twoWayModel,
      parts: twoWayModel.parts.map((part) =>
        part.kind === 'capacitor' && part.id === 'C2' ? { ...part, farad: 1.08 * part.farad } : part,
      ),
      speakers: twoWayModel.speakers.map((speaker) =>
        speaker.partId === 'LS1'
          ? { ...speaker, radiation: { ...speaker.radiation, distanceM: speaker.radiation.distanceM + 0.012 } }
          : speaker,
      ),
    };
    const measured = roughened(
      levelsDbSpl(expectValue(simulate(built, grid)).sum).map((db) => db + 1.5),
      0.1,
      6,
    );
    const fitted = fitUncertain(measured, predict, uncertain, 0.1);
    const [level, depth, c2, l1] = fitted.values;
    expect(level!.value).toBeCloseTo(1.5, 1);
    expect(depth!.value).toBeCloseTo(0.012, 3);
    expect(c2!.value / 6.8e-6).toBeCloseTo(1.08, 2);
    expect(l1!.value / 1.2e-3).toBeCloseTo(1, 2);
    expect(fitted.afterDb).toBeLessThan(0.13);
    expect(fitted.beforeDb).toBeGreaterThan(1);
    expect(depth!.id).toBe('LS1 depth');
  });
  it('refuses what is not there', () => {
    const ask = (doubt: SpeakerUncertainty) => () => speakerPrediction(twoWayModel, grid, [doubt]);
    expect(ask({ kind: 'part', partId: 'LS1', relativeSd: 0.1 })).toThrow(RangeError);
    expect(ask({ kind: 'depth', partId: 'C1', sdM: 0.1 })).toThrow(RangeError);
  });
});
