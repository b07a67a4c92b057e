import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualCoilHeat } from '../../../../src/core/acoustics/index.ts';
import { type ActiveFilter, filterTransfer } from '../../../../src/core/circuit/index.ts';
import {
  GREATEST_GAIN_DB,
  greatestLevel,
  type LimitedCurve,
  type LimitInput,
  type LimitStatements,
  limitsOf,
  spareAtDrive,
} from '../../../../src/core/design/limits/index.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import { levelsDbSpl, magnitudes } from '../../../../src/core/speaker/complexCurve.ts';
import type { SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { pointSource } from '../../../../src/core/speaker/pointSource.ts';
import { simulate } from '../../../../src/core/speaker/simulate.ts';
import { twoWay } from '../../speaker/fixture.ts';

const grid = sweepGrid(15, 20000, 60);
const model: SpeakerModel = {
  ...twoWay,
  passiveRadiators: [
    {
      id: 'PR1',
      chamberId: 'low',
      sdM2: 0.03,
      mmsKg: 0.12,
      cmsMPerN: 0.0012,
      rmsKgPerS: 1,
      radiation: pointSource(1.1),
    },
  ],
};
const statements: LimitStatements = {
  drivers: new Map([
    ['LS1', { xmaxM: 0.006, ratedPowerW: 60, heat: usualCoilHeat('small') }],
    ['LS2', { xmaxM: 0.0003, ratedPowerW: 15, heat: usualCoilHeat('dome') }],
  ]),
  radiatorXmaxM: new Map([['PR1', 0.005]]),
  portPeakMPerS: 17,
  amplifiers: new Map([['V1', { peakVoltageV: 28, peakCurrentA: 3.8 }]]),
  startC: 20,
  lastsS: 60,
};
const driven = (voltageV: number, filter?: ActiveFilter): SpeakerModel => ({
  ...model,
  amplifiers: model.amplifiers.map((amplifier) => ({
    ...amplifier,
    voltageV,
    ...(filter && {
      drive: (omegas: Float64Array, re: Float64Array, im: Float64Array) => filterTransfer(filter, omegas, re, im),
    }),
  })),
});
const run = (at: SpeakerModel, hz: Float64Array = grid) => {
  const result = simulate(at, hz);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const limitsAt = (voltageV: number, filter?: ActiveFilter): LimitInput => {
  const at = driven(voltageV, filter);
  return limitsOf(at, run(at), voltageV, statements);
};

describe('greatestLevel', () => {
  // Which limits stand, and from where: rated power, V and A peak of the amplifier; port and radiator.
  const SETS = [
    { ratedLowW: 60, ratedHighW: 15, peakVoltageV: 28, peakCurrentA: 3.8, portPeakMPerS: 17, radiatorM: 0.009 },
    { ratedLowW: 1e6, ratedHighW: 1e6, peakVoltageV: 1e4, peakCurrentA: 1e4, portPeakMPerS: 17, radiatorM: 0.009 },
    { ratedLowW: 60, ratedHighW: 15, peakVoltageV: 90, peakCurrentA: 9, portPeakMPerS: 5, radiatorM: 0.001 },
  ];
  it('agrees with a search over the drive that solves the loudspeaker again at every step', () => {
    const kinds = new Set<string>();
    for (const set of SETS) {
      const { ratedLowW, ratedHighW, peakVoltageV, peakCurrentA, portPeakMPerS, radiatorM } = set;
      const heats = [usualCoilHeat('small'), usualCoilHeat('dome')] as const;
      const stated: LimitStatements = {
        ...statements,
        drivers: new Map([
          ['LS1', { xmaxM: 0.006, ratedPowerW: ratedLowW, heat: heats[0] }],
          ['LS2', { xmaxM: 0.0003, ratedPowerW: ratedHighW, heat: heats[1] }],
        ]),
        radiatorXmaxM: new Map([['PR1', radiatorM]]),
        portPeakMPerS,
        amplifiers: new Map([['V1', { peakVoltageV, peakCurrentA }]]),
      };
      const found = greatestLevel(limitsOf(driven(2.83), run(driven(2.83)), 2.83, stated));
      for (let i = 0; i < grid.length; i += 3) {
        const hz = Float64Array.of(grid[i]!);
        // The limits once more, by hand from a simulation at that drive: what passes one of them is too much.
        const isTooMuch = (voltageV: number): boolean => {
          const { speakers, ports, passiveRadiators, amplifiers, partPowersW } = run(driven(voltageV), hz);
          const [low, high] = [speakers[0]!, speakers[1]!];
          const [lowW, highW] = [partPowersW.get('LS1')![0]!, partPowersW.get('LS2')![0]!];
          const heatedC = (powerW: number, which: 0 | 1): number =>
            heats[which].path.reduce(
              (sum, term) => sum + powerW * term.resistanceKPerW * (1 - Math.exp(-60 / term.timeConstantS)),
              20,
            );
          return (
            low.excursionPeakM[0]! > 0.006 ||
            high.excursionPeakM[0]! > 0.0003 ||
            lowW > ratedLowW ||
            highW > ratedHighW ||
            heatedC(lowW, 0) > 180 ||
            heatedC(highW, 1) > 180 ||
            passiveRadiators[0]!.excursionPeakM[0]! > radiatorM ||
            Math.SQRT2 * ports[0]!.airSpeedRmsMPerS[0]! > portPeakMPerS ||
            Math.SQRT2 * voltageV > peakVoltageV ||
            Math.SQRT2 * magnitudes(amplifiers[0]!.current)[0]! > peakCurrentA
          );
        };
        let [low, high] = [1e-3, 1e4];
        while (high / low > 1 + 1e-10) {
          const middle = Math.sqrt(low * high);
          if (isTooMuch(middle)) high = middle;
          else low = middle;
        }
        const levelDb = levelsDbSpl(run(driven(low), hz).sum)[0]!;
        expect(found.levelsDb[i]!).toBeCloseTo(levelDb, 6);
        expect(found.gainsDb[i]!).toBeCloseTo(20 * Math.log10(low / 2.83), 6);
        kinds.add(found.bindingBy[i]!.kind);
      }
    }
    // Every kind of limit has been the one that binds.
    expect([...kinds].sort()).toEqual([
      'amplifier-current',
      'amplifier-voltage',
      'coil-heat',
      'excursion',
      'port-speed',
      'radiator-excursion',
      'rated-power',
    ]);
  });

  it('does not depend on the set drive; the room left over does, dB for dB', () => {
    const [small, large] = [greatestLevel(limitsAt(1)), greatestLevel(limitsAt(10))];
    grid.forEach((_, i) => {
      expect(large.levelsDb[i]!).toBeCloseTo(small.levelsDb[i]!, 9);
      expect(small.gainsDb[i]! - large.gainsDb[i]!).toBeCloseTo(20, 9);
      expect(large.bindingBy[i]!.id).toBe(small.bindingBy[i]!.id);
      expect(large.bindingBy[i]!.kind).toBe(small.bindingBy[i]!.kind);
    });
  });

  it('never falls when a limit is moved out, and never rises with one more limit (seed 77)', () => {
    const input = limitsAt(2.83);
    const before = greatestLevel(input);
    fc.assert(
      fc.property(fc.nat(input.limited.length - 1), fc.double({ min: 1, max: 10, noNaN: true }), (which, factor) => {
        const eased = input.limited.map((curve, k) =>
          k === which ? { ...curve, limit: factor * curve.limit } : curve,
        );
        const without = input.limited.filter((_, k) => k !== which);
        const [wider, fewer] = [eased, without].map((limited) => greatestLevel({ ...input, limited }));
        grid.forEach((_, i) => {
          expect(wider!.levelsDb[i]!).toBeGreaterThanOrEqual(before.levelsDb[i]!);
          expect(fewer!.levelsDb[i]!).toBeGreaterThanOrEqual(wider!.levelsDb[i]! - 1e-12);
        });
      }),
      { seed: 77, numRuns: 40 },
    );
  });

  it('says nothing where nothing binds within 60 dB', () => {
    const input = limitsAt(2.83);
    const idle: LimitedCurve = {
      kind: 'excursion',
      id: 'LS1',
      values: new Float64Array(grid.length),
      limit: 1,
      growsWith: 'drive',
    };
    for (const limited of [[], [idle]]) {
      const free = greatestLevel({ ...input, limited });
      expect(free.bindingBy.every((by) => by === null)).toBe(true);
      expect(free.gainsDb.every((gainDb) => gainDb === GREATEST_GAIN_DB)).toBe(true);
    }
  });

  it('an active high-pass at 45 Hz gives excursion, port and radiator room below it and leaves the treble alone', () => {
    const filter = { kind: 'high-pass', shape: 'butterworth', order: 4, cornerHz: 45 } as const;
    const [plain, filtered] = [limitsAt(10), limitsAt(10, filter)];
    const spare = (input: LimitInput) => spareAtDrive(input, 15, 45);
    for (const [k, before] of spare(plain).entries()) {
      if (!['excursion', 'port-speed', 'radiator-excursion'].includes(before.curve.kind)) continue;
      expect(spare(filtered)[k]!.share).toBeLessThan(before.share);
    }
    const last = grid.length - 1;
    expect(greatestLevel(filtered).levelsDb[last]!).toBeCloseTo(greatestLevel(plain).levelsDb[last]!, 6);
    // The amplifier itself puts out less where the filter takes away: at 15 Hz 38 dB less.
    const volts = (input: LimitInput) => input.limited.find(({ kind }) => kind === 'amplifier-voltage')!.values[0]!;
    expect(volts(filtered) / volts(plain)).toBeCloseTo((1 + 3 ** 8) ** -0.5, 10);
  });
});

describe('spareAtDrive', () => {
  it('finds the worst frequency of the band, and the drive that just uses it up', () => {
    const input = limitsAt(10);
    for (const { curve, atHz, share, spareDb } of spareAtDrive(input, 20, 20000)) {
      const index = grid.indexOf(atHz);
      const allowedV = 10 * 10 ** (spareDb! / 20);
      const again = limitsAt(allowedV).limited.find(({ kind, id }) => kind === curve.kind && id === curve.id)!;
      expect(again.values[index]! / again.limit).toBeCloseTo(1, 9);
      const values = again.values.filter((_, i) => grid[i]! >= 20);
      expect(Math.max(...values)).toBe(again.values[index]!);
      expect(share * 10 ** (spareDb! / 20)).toBeCloseTo(1, 12);
    }
  });
  it('is empty for a band without points, and has no decibels for what is at rest', () => {
    const input = limitsAt(10);
    expect(spareAtDrive(input, 15.1, 15.2)).toEqual([]);
    const still = input.limited.map((curve) => ({ ...curve, values: new Float64Array(grid.length) }));
    expect(spareAtDrive({ ...input, limited: still }, 20, 20000).every(({ spareDb }) => spareDb === null)).toBe(true);
  });
});

describe('limitsOf', () => {
  it('lists what is known and nothing else', () => {
    const kinds = limitsAt(2.83).limited.map(({ kind, id }) => `${id} ${kind}`);
    expect(kinds).toEqual([
      'LS1 excursion',
      'LS1 rated-power',
      'LS1 coil-heat',
      'LS2 excursion',
      'LS2 rated-power',
      'LS2 coil-heat',
      'PR1 radiator-excursion',
      'P1 port-speed',
      'V1 amplifier-voltage',
      'V1 amplifier-current',
    ]);
    const nothing: LimitStatements = {
      drivers: new Map(),
      radiatorXmaxM: new Map([['PR1', null]]),
      portPeakMPerS: null,
      amplifiers: new Map(),
      startC: 20,
      lastsS: 60,
    };
    const at = driven(2.83);
    expect(limitsOf(at, run(at), 2.83, nothing).limited).toEqual([]);
  });
  it('a coil that is too hot before it starts is held to 1 K; other limits of 0 are a slip', () => {
    const at = driven(2.83);
    const hot = limitsOf(at, run(at), 2.83, { ...statements, startC: 200 });
    const limit = hot.limited.find(({ kind }) => kind === 'coil-heat')!.limit;
    const cold = limitsOf(at, run(at), 2.83, statements);
    expect(cold.limited.find(({ kind }) => kind === 'coil-heat')!.limit / limit).toBeCloseTo(160, 9);
    expect(() => limitsOf(at, run(at), 2.83, { ...statements, portPeakMPerS: 0 })).toThrow(RangeError);
  });
});
