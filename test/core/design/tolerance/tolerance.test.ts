import { describe, expect, it } from 'vitest';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import {
  type BuiltPairs,
  buildPairs,
  drawPair,
  firstOrderSpread,
  type PartTolerance,
  pairStatistics,
  partDeviations,
  type Spread,
  spreadDeviation,
  type ToleranceSpec,
  tighterParts,
} from '../../../../src/core/design/tolerance/index.ts';
import { crossoverTrial, type TrialCurve, trialLevelsDb, tryValues } from '../../../../src/core/design/trial/index.ts';
import { succeeded } from '../../circuit/solved.ts';
import { demoModel } from '../trial/trialModels.ts';

const frequenciesHz = sweepGrid(60, 16000, 40);
const trial = succeeded(crossoverTrial({ model: demoModel(), frequenciesHz }));
const nominal = succeeded(tryValues(trial, trial.start));
const curve: TrialCurve = { kind: 'sum', points: [0] };
const uniform: Spread = { kind: 'uniform' };
const normal: Spread = { kind: 'normal', sigmas: 3 };
const window = { fromHz: 100, toHz: 15000, withinDb: 1, levelIsFree: false };

const everyPart = (tolerance: number, spread: Spread, matchedWithin: number | null = null): PartTolerance[] =>
  trial.variables.map(({ partId }) => ({ partId, tolerance, spread, matchedWithin }));
const built = (spec: ToleranceSpec, pairs: number, first = 0): BuiltPairs =>
  succeeded(buildPairs(trial, spec, curve, { first, pairs }));

describe('spreadDeviation', () => {
  it('is 1/√3 of a uniform spread, and of a bell cut off at one deviation 0.5396', () => {
    expect(spreadDeviation(uniform)).toBeCloseTo(0.577350269, 9);
    // 1 - 2 φ(1) / (2 Φ(1) - 1), from the tables φ(1) = 0.24197072, Φ(1) = 0.84134475.
    expect(spreadDeviation({ kind: 'normal', sigmas: 1 })).toBeCloseTo(
      Math.sqrt(1 - (2 * 0.24197072) / (2 * 0.84134475 - 1)),
      7,
    );
    // So far out the cut does not matter.
    expect(spreadDeviation({ kind: 'normal', sigmas: 6 })).toBeCloseTo(1 / 6, 6);
  });
});

describe('drawPair', () => {
  it('keeps every value within its tolerance and a matched pair within its match (seed 3)', () => {
    const parts = everyPart(0.1, normal, 0.02);
    parts[0] = { ...parts[0]!, spread: uniform, matchedWithin: null };
    for (let pair = 0; pair < 500; pair++) {
      const { left, right } = drawPair(trial, { parts, seed: 3 }, pair);
      left.forEach((value, i) => {
        const [a, b] = [value / trial.start[i]! - 1, right[i]! / trial.start[i]! - 1];
        expect(Math.max(Math.abs(a), Math.abs(b))).toBeLessThanOrEqual(0.1 + 1e-12);
        if (i > 0) expect(Math.abs(a - b)).toBeLessThanOrEqual(0.02 + 1e-12);
      });
    }
  });

  it.each([
    ['uniform', uniform, null],
    ['bell', normal, null],
    ['bell, matched', normal, 0.04],
    ['uniform, matched', uniform, 0.04],
  ] as const)('has the deviations of its spread: %s (seed 8)', (_name, spread, matchedWithin) => {
    const [part] = everyPart(0.1, spread, matchedWithin);
    const draws = 20_000;
    let squares = 0;
    let apart = 0;
    for (let pair = 0; pair < draws; pair++) {
      const { left, right } = drawPair(trial, { parts: [part!], seed: 8 }, pair);
      const [a, b] = [left[0]! / trial.start[0]! - 1, right[0]! / trial.start[0]! - 1];
      squares += a * a + b * b;
      apart += (a - b) ** 2;
    }
    const { own, difference } = partDeviations(part!);
    // A standard deviation from n draws is uncertain by 1/√(2n), 0.5 %: four of them.
    expect(Math.abs(Math.sqrt(squares / (2 * draws)) / own - 1)).toBeLessThan(0.02);
    expect(Math.abs(Math.sqrt(apart / draws) / difference - 1)).toBeLessThan(0.02);
  });

  it('is the same for the same seed and number, and another for others', () => {
    const parts = everyPart(0.05, uniform);
    expect(drawPair(trial, { parts, seed: 1 }, 7)).toEqual(drawPair(trial, { parts, seed: 1 }, 7));
    expect(drawPair(trial, { parts, seed: 1 }, 8).left).not.toEqual(drawPair(trial, { parts, seed: 1 }, 7).left);
    expect(drawPair(trial, { parts, seed: 2 }, 7).left).not.toEqual(drawPair(trial, { parts, seed: 1 }, 7).left);
    const unknown: PartTolerance = { partId: 'J1', tolerance: 0.1, spread: uniform, matchedWithin: null };
    expect(() => drawPair(trial, { parts: [unknown], seed: 1 }, 0)).toThrow(/J1/);
  });
});

describe('bands of small tolerances agree with the analytic first-order band', () => {
  it.each([
    ['uniform', uniform, null],
    ['bell', normal, null],
    ['bell, matched', normal, 0.0004],
  ] as const)('%s, 0.1 %% (seed 20260301)', (_name, spread, matchedWithin) => {
    const parts = everyPart(0.001, spread, matchedWithin);
    const pairs = 1500;
    const statistics = pairStatistics(
      [built({ parts, seed: 20260301 }, pairs)],
      frequenciesHz,
      [0.05, 0.5, 0.95],
      window,
    );
    const { deviationDb, differenceDb, extremeDb } = firstOrderSpread(nominal, curve, parts);
    // Left and right of a pair hang together, so at least as many independent values as pairs: five times 1/√(2n).
    const tolerance = 5 / Math.sqrt(2 * pairs);
    frequenciesHz.forEach((_, f) => {
      expect(Math.abs(statistics.deviationDb[f]! / deviationDb[f]! - 1)).toBeLessThan(tolerance);
      expect(statistics.highestDb[f]!).toBeLessThan(extremeDb[f]! * 1.01);
      expect(statistics.lowestDb[f]!).toBeGreaterThan(-extremeDb[f]! * 1.01);
      expect(Math.abs(statistics.quantilesDb[1]![f]!)).toBeLessThan(0.1 * deviationDb[f]!);
      // 95 % of differences lie below 1.96 deviations where many parts make a bell of it; fewer make it less.
      expect(statistics.difference95Db[f]! / differenceDb[f]!).toBeGreaterThan(1.6);
      expect(statistics.difference95Db[f]! / differenceDb[f]!).toBeLessThan(2.15);
    });
  });

  it('a single uniform part has the quantiles of a straight line', () => {
    const i = 3;
    const part: PartTolerance = {
      partId: trial.variables[i]!.partId,
      tolerance: 0.002,
      spread: uniform,
      matchedWithin: null,
    };
    const statistics = pairStatistics([built({ parts: [part], seed: 5 }, 2000)], frequenciesHz, [0.05, 0.95], window);
    const { extremeDb } = firstOrderSpread(nominal, curve, [part]);
    const at = extremeDb.indexOf(Math.max(...extremeDb));
    expect(Math.abs(statistics.quantilesDb[1]![at]! / extremeDb[at]! - 0.9)).toBeLessThan(0.02);
    expect(Math.abs(statistics.quantilesDb[0]![at]! / extremeDb[at]! + 0.9)).toBeLessThan(0.02);
  });
});

describe('buildPairs', () => {
  const spec: ToleranceSpec = { parts: everyPart(0.1, normal), seed: 4 };

  it('gives the same pairs in one piece and in two', () => {
    const whole = built(spec, 60);
    const [first, second] = [built(spec, 40), built(spec, 20, 40)];
    expect(Float32Array.of(...first.departuresDb, ...second.departuresDb)).toEqual(whole.departuresDb);
    const of = (parts: readonly BuiltPairs[]) => pairStatistics(parts, frequenciesHz, [0.1, 0.9], window);
    expect(of([first, second])).toEqual(of([whole]));
  });

  it('holds what the trial of a drawn pair gives', () => {
    const { right } = drawPair(trial, spec, 12);
    const levels = trialLevelsDb(succeeded(tryValues(trial, right)), curve);
    const own = trialLevelsDb(nominal, curve);
    const { departuresDb } = built(spec, 1, 12);
    levels.forEach((level, f) => {
      expect(departuresDb[frequenciesHz.length + f]).toBeCloseTo(level - own[f]!, 5);
    });
  });

  it('tells how far it is, and keeps what it has when it is stopped', () => {
    const told: number[] = [];
    const stopped = succeeded(
      buildPairs(trial, spec, curve, {
        first: 0,
        pairs: 500,
        onProgress: (done) => told.push(done),
        shouldStop: () => told.length >= 3,
      }),
    );
    expect(told).toEqual([25, 50, 75]);
    expect(stopped).toMatchObject({ pairs: 75, wasStopped: true });
    expect(stopped.departuresDb).toEqual(built(spec, 75).departuresDb);
  });
});

describe('yield and differences', () => {
  const exact: ToleranceSpec = { parts: [], seed: 1 };

  it('is all of exact builds and falls with the window', () => {
    const perfect = pairStatistics([built(exact, 30)], frequenciesHz, [0.5], window);
    expect(perfect.loudspeakerYield.share).toBe(1);
    expect(perfect.worstDifference?.db).toBe(0);
    const builds = [built({ parts: everyPart(0.1, uniform), seed: 9 }, 400)];
    const within = (withinDb: number, levelIsFree = false) =>
      pairStatistics(builds, frequenciesHz, [0.5], { ...window, withinDb, levelIsFree });
    const shares = [0.2, 0.5, 1, 3].map((db) => within(db).loudspeakerYield.share);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares[0]).toBeLessThan(0.2);
    expect(shares[3]).toBe(1);
    expect(within(0.5, true).loudspeakerYield.share).toBeGreaterThanOrEqual(shares[1]!);
    expect(within(0.5).pairYield.share).toBeLessThanOrEqual(shares[1]!);
    expect(within(0.5).loudspeakerYield.standardError).toBeLessThan(0.02);
  });

  it('matching brings left and right together', () => {
    const of = (matchedWithin: number | null) =>
      pairStatistics(
        [built({ parts: everyPart(0.1, uniform, matchedWithin), seed: 2 }, 200)],
        frequenciesHz,
        [],
        window,
      ).worstDifference!.db;
    expect(of(0.01)).toBeLessThan(of(null) / 5);
  });

  it('counts by hand what stands in a few rows', () => {
    const one: BuiltPairs = {
      first: 0,
      pairs: 2,
      wasStopped: false,
      frequencyCount: 2,
      departuresDb: Float32Array.of(0.5, -0.5, 0.25, 1.5, 0.5, 0.5, -0.5, -1),
    };
    const few = pairStatistics([one], Float64Array.of(100, 1000), [0, 0.5, 1], {
      fromHz: 50,
      toHz: 2000,
      withinDb: 0.75,
      levelIsFree: false,
    });
    expect(few.quantilesDb.map((row) => [...row])).toEqual([
      [-0.5, -1],
      [0.375, 0],
      [0.5, 1.5],
    ]);
    expect(few.meanDb[1]).toBeCloseTo(0.125, 6);
    expect(few.worstDifference).toEqual({ db: 2, atHz: 1000, pair: 0 });
    expect(few.loudspeakerYield.share).toBe(0.5);
    expect(few.pairYield.share).toBe(0);
    expect(() => pairStatistics([], frequenciesHz, [], window)).toThrow(/Nothing/);
    expect(() => pairStatistics([one], frequenciesHz, [], window)).toThrow(/other sweeps/);
  });
});

describe('tighterParts', () => {
  it('names the part whose exactness narrows the builds most, with the shares that building shows', () => {
    const parts = everyPart(0.05, uniform);
    const spread = firstOrderSpread(nominal, curve, parts);
    const ranked = tighterParts(spread, parts, frequenciesHz, window);
    expect(ranked.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(ranked[0]!.share).toBeGreaterThan(ranked.at(-1)!.share);
    const variance = (list: PartTolerance[]) => {
      const { deviationDb } = pairStatistics([built({ parts: list, seed: 6 }, 1500)], frequenciesHz, [], window);
      return deviationDb.reduce(
        (sum, db, f) => (frequenciesHz[f]! >= 100 && frequenciesHz[f]! <= 15000 ? sum + db * db : sum),
        0,
      );
    };
    const without = variance(parts.filter(({ partId }) => partId !== ranked[0]!.partId));
    expect(Math.abs(1 - without / variance(parts) - ranked[0]!.share)).toBeLessThan(0.06);
  });
});
