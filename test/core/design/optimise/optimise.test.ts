import { describe, expect, it } from 'vitest';
import type { Part } from '../../../../src/core/circuit/part.ts';
import {
  type FitProblem,
  type Limits,
  meritOf,
  NO_LIMITS,
  type Optimised,
  optimise,
  type Progress,
  preferredChoices,
  roundedValues,
} from '../../../../src/core/design/optimise/index.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import { type Target, targetFor } from '../../../../src/core/design/targets/index.ts';
import {
  type CrossoverTrial,
  crossoverTrial,
  trialImpedance,
  trialLevelsDb,
  trialPower,
  tryValues,
} from '../../../../src/core/design/trial/index.ts';
import { word } from '../../../../src/core/messages/index.ts';
import type { SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { succeeded } from '../../circuit/solved.ts';
import { amplifierPart, twoWay } from '../../speaker/fixture.ts';
import { demoAside, demoModel } from '../trial/trialModels.ts';

const frequenciesHz = sweepGrid(80, 16000, 32);
const flat = { levelDb: null, tiltDbPerOctave: 0, pivotHz: 1000, highPass: null, lowPass: null };
const band = [{ fromHz: 150, toHz: 14000, weight: 1 }];
const trial = succeeded(crossoverTrial({ model: demoModel(), frequenciesHz }));
const boundsBy = (of: CrossoverTrial, factor: number) =>
  Array.from(of.start, (value) => ({ least: value / factor, greatest: value * factor }));
const flatSum = targetFor({ kind: 'sum', points: [0] }, flat, band, frequenciesHz);
const problem: FitProblem = { trial, targets: [flatSum], bounds: boundsBy(trial, 4), limits: NO_LIMITS };
const options = { starts: 3, seed: 1, criterion: 'rms', choices: null } as const;
const E12 = { resistor: 'E12', capacitor: 'E12', inductor: 'E12' } as const;
const best = ({ preferred, continuous }: Optimised) => preferred ?? continuous;

describe('the continuous search', () => {
  const unlimited = succeeded(optimise(problem, options));

  it('makes demo (a) flatter and is the same each time', () => {
    expect(unlimited.continuous.rmsDb).toBeLessThan(0.5 * unlimited.start.rmsDb);
    expect(unlimited.ending).toMatchObject({ kind: 'converged', keepsLimits: true });
    expect(succeeded(optimise(problem, options))).toEqual(unlimited);
  });

  it('stands where the derivatives vanish, or at a bound with the error falling beyond it', () => {
    const { values } = unlimited.continuous;
    const rms = (at: Float64Array): number => {
      const levels = trialLevelsDb(succeeded(tryValues(trial, at)), flatSum.curve);
      const mean = weighted(levels, flatSum);
      return Math.sqrt(
        weighted(
          levels.map((x) => (x - mean) ** 2),
          flatSum,
        ),
      );
    };
    expect(rms(values)).toBeCloseTo(unlimited.continuous.rmsDb, 12);
    values.forEach((value, i) => {
      const slope = (rms(changed(values, i, value * 1.001)) - rms(changed(values, i, value * 0.999))) / 0.002;
      const { least, greatest } = problem.bounds[i]!;
      if (value <= least) expect(slope).toBeGreaterThan(0);
      else if (value >= greatest) expect(slope).toBeLessThan(0);
      else expect(Math.abs(slope)).toBeLessThan(0.01);
      expect(unlimited.ending.atBounds.includes(trial.variables[i]!.partId)).toBe(value <= least || value >= greatest);
    });
    expect(unlimited.ending.atBounds.length).toBeGreaterThan(0);
  });

  it('for the greatest error ends with a smaller one, and a larger mean', () => {
    const minimax = succeeded(optimise(problem, { ...options, criterion: 'greatest' }));
    expect(minimax.continuous.greatestDb).toBeLessThan(0.9 * unlimited.continuous.greatestDb);
    expect(minimax.continuous.rmsDb).toBeGreaterThan(unlimited.continuous.rmsDb);
  });

  it('keeps the least impedance, at a price in the response', () => {
    const free = leastOhm(unlimited.continuous.values);
    const ohm = free * 1.15;
    const kept = succeeded(
      optimise({ ...problem, limits: { ...NO_LIMITS, leastImpedances: [{ amplifierId: 'V1', ohm }] } }, options),
    );
    expect(leastOhm(kept.continuous.values)).toBeGreaterThan(ohm * 0.9989);
    expect(leastOhm(kept.continuous.values)).toBeLessThan(ohm * 1.01);
    expect(kept.continuous.rmsDb).toBeGreaterThan(unlimited.continuous.rmsDb);
    expect(kept.ending).toMatchObject({ keepsLimits: true, limitsMet: ['impedance V1'] });
  });

  it('keeps the power of a resistor and the cost of all parts', () => {
    const powerOf = (values: Float64Array) => Math.max(...trialPower(succeeded(tryValues(trial, values)), 'R4'));
    const watt = 0.7 * powerOf(unlimited.continuous.values);
    const prices = trial.parts.map((part) =>
      part.kind === 'capacitor' ? { fixed: 0.5, perUnit: 3e5, exponent: 1 } : { fixed: 1, perUnit: 0, exponent: 1 },
    );
    const costs = (values: Float64Array) =>
      prices.reduce((sum, law, i) => sum + law.fixed + law.perUnit * values[i]!, 0);
    const most = 0.8 * costs(unlimited.continuous.values);
    const limits: Limits = { leastImpedances: [], greatestPowers: [{ partId: 'R4', watt }], cost: { most, prices } };
    const kept = succeeded(optimise({ ...problem, limits }, options));
    expect(powerOf(kept.continuous.values)).toBeLessThan(watt * 1.0011);
    expect(kept.continuous.cost).toBeCloseTo(costs(kept.continuous.values), 9);
    expect(kept.continuous.cost).toBeLessThan(most * 1.0011);
    expect(kept.ending.limitsMet).toContain('cost');
    expect(kept.ending.keepsLimits).toBe(true);
  });

  it('says so when limits cannot be kept', () => {
    const limits: Limits = { ...NO_LIMITS, leastImpedances: [{ amplifierId: 'V1', ohm: 200 }] };
    const { ending } = succeeded(optimise({ ...problem, limits }, options));
    expect(ending.keepsLimits).toBe(false);
  });

  it('says so when nothing better is found', () => {
    const levelsDb = trialLevelsDb(succeeded(tryValues(trial, trial.start)), flatSum.curve);
    const own: Target = { ...flatSum, levelsDb, levelIsFree: false };
    const { ending, continuous, start } = succeeded(optimise({ ...problem, targets: [own] }, options));
    expect(ending.kind).toBe('no-better');
    expect(continuous.values).toEqual(start.values);
  });

  it('serves several points, single ways and voltages at once', () => {
    const both = succeeded(crossoverTrial({ model: demoModel(), frequenciesHz, heard: [demoModel(), demoAside()] }));
    const lowPass = { shape: { family: 'linkwitz-riley', order: 4 }, cornerHz: 450 } as const;
    const targets = [
      targetFor({ kind: 'sum', points: [0, 1] }, flat, band, frequenciesHz),
      targetFor(
        { kind: 'way', speakerId: 'LS1', points: [0] },
        { ...flat, levelDb: 84, lowPass },
        [{ fromHz: 150, toHz: 1500, weight: 0.5 }],
        frequenciesHz,
      ),
      targetFor(
        { kind: 'voltage', nodes: ['w1', '0'], amplifierId: 'V1' },
        { ...flat, levelDb: 0, lowPass },
        [{ fromHz: 150, toHz: 1500, weight: 0.1 }],
        frequenciesHz,
      ),
    ];
    const { start, continuous } = succeeded(optimise({ ...problem, trial: both, targets }, options));
    expect(continuous.rmsDb).toBeLessThan(0.6 * start.rmsDb);
  });
});

describe('the search for preferred values', () => {
  const choices = succeeded(preferredChoices(trial, problem.bounds, E12));
  const withChoices = { ...options, choices };
  const found = succeeded(optimise(problem, withChoices));

  it('ends with values of the series, better than plain rounding, and says in what sense it is the best', () => {
    expect(found.rounded!.values).toEqual(roundedValues(found.continuous.values, choices));
    expect(found.preferred!.rmsDb).toBeLessThan(0.95 * found.rounded!.rmsDb);
    expect(found.preferred!.rmsDb).toBeGreaterThan(found.continuous.rmsDb);
    expect(found.proof).toBe('exchanged');
    found.preferred!.values.forEach((value, i) => {
      expect(choices[i]).toContain(value);
    });
  });

  it('no exchange of one part, or of two by a step each, makes it better', () => {
    const { values } = found.preferred!;
    const rms = (at: Float64Array): number => {
      const levels = trialLevelsDb(succeeded(tryValues(trial, at)), flatSum.curve);
      const mean = weighted(levels, flatSum);
      return Math.sqrt(
        weighted(
          levels.map((x) => (x - mean) ** 2),
          flatSum,
        ),
      );
    };
    const least = found.preferred!.rmsDb - 1e-8;
    const steps = (i: number, most: number) => {
      const at = choices[i]!.indexOf(values[i]!);
      return Array.from({ length: 2 * most + 1 }, (_, k) => choices[i]![at + k - most]).filter((x) => x !== undefined);
    };
    values.forEach((_, i) => {
      for (const a of steps(i, 2)) expect(rms(changed(values, i, a))).toBeGreaterThan(least);
      for (let j = 0; j < i; j++) {
        for (const a of steps(i, 1)) {
          for (const b of steps(j, 1)) expect(rms(changed(changed(values, i, a), j, b))).toBeGreaterThan(least);
        }
      }
    });
  });

  it('leaves coils that are wound to measure at any value', () => {
    const wound = succeeded(preferredChoices(trial, problem.bounds, { ...E12, inductor: null }));
    const { preferred, rounded } = succeeded(optimise(problem, { ...options, choices: wound }));
    expect(preferred!.rmsDb).toBeLessThan(found.preferred!.rmsDb);
    expect(preferred!.rmsDb).toBeLessThan(rounded!.rmsDb);
    trial.parts.forEach(({ kind }, i) => {
      if (kind !== 'inductor') expect(choices[i]).toContain(preferred!.values[i]);
    });
  });

  it('keeps the limits that plain rounding would break', () => {
    const ohm = 1.15 * leastOhm(found.continuous.values);
    const limits: Limits = { ...NO_LIMITS, leastImpedances: [{ amplifierId: 'V1', ohm }] };
    const kept = succeeded(optimise({ ...problem, limits }, withChoices));
    expect(leastOhm(kept.preferred!.values)).toBeGreaterThan(0.9989 * ohm);
    expect(meritOf(kept.preferred!, 'rms')).toBeLessThanOrEqual(meritOf(kept.rounded!, 'rms'));
  });

  it('chooses from a drawer, and names the part for which it holds nothing', () => {
    const drawer = [1e-6, 2.2e-6, 4.7e-6, 10e-6, 22e-6, 47e-6, 0.68e-6];
    const few = succeeded(preferredChoices(trial, problem.bounds, { ...E12, capacitor: drawer }));
    expect([...few[1]!]).toEqual([10e-6, 22e-6, 47e-6]);
    const none = preferredChoices(trial, problem.bounds, { ...E12, capacitor: [1] });
    expect(none.ok).toBe(false);
    if (!none.ok) expect(none.problems.map((p) => word(p).sentence)[0]).toMatch(/C1/);
  });
});

describe('stopping and progress', () => {
  const choices = succeeded(preferredChoices(trial, problem.bounds, E12));

  it('tells of both stages, with the best so far never getting worse', () => {
    const told: Progress[] = [];
    succeeded(optimise(problem, { ...options, choices }, { onProgress: (p) => told.push(p) }));
    for (const stage of ['continuous', 'preferred'] as const) {
      const ofStage = told.filter((p) => p.stage === stage);
      expect(ofStage.length).toBeGreaterThan(2);
      expect(ofStage.map(({ bestDb }) => bestDb)).toEqual(
        ofStage.map(({ bestDb }) => bestDb).toSorted((a, b) => b - a),
      );
      expect(ofStage.at(-1)!.share).toBe(1);
    }
  });

  it.each([0, 1, 30, 200, 700, 1200])('keeps the best when it is stopped after %d looks', (after) => {
    let looks = 0;
    const stopped = succeeded(optimise(problem, { ...options, choices }, { shouldStop: () => looks++ >= after }));
    expect(stopped.ending.kind).toBe('stopped');
    expect(stopped.proof).toBeNull();
    expect(stopped.ending.evaluations).toBe(after);
    expect(stopped.continuous.rmsDb).toBeLessThanOrEqual(stopped.start.rmsDb);
    expect(meritOf(best(stopped), 'rms')).toBeLessThanOrEqual(meritOf(stopped.rounded!, 'rms'));
    best(stopped).values.forEach((value, i) => {
      expect(choices[i]).toContain(value);
    });
  });
});

describe('few parts', () => {
  // A ladder into a resistor, no speaker in it.
  const ladder: SpeakerModel = {
    ...twoWay,
    amplifiers: [{ id: 'V1', voltageV: 1, resistanceOhm: 0 }],
    speakers: [],
    chambers: [],
    ports: [],
    parts: [
      amplifierPart,
      ...twoWay.parts.flatMap((part): Part[] => (part.id === 'L1' || part.id === 'C1' ? [part] : [])),
      { kind: 'resistor', id: 'Rload', nodes: ['w', '0'], note: '', ohm: 6, ratedPowerW: null },
    ],
  };
  const small = succeeded(
    crossoverTrial({ model: ladder, frequenciesHz, variables: [{ partId: 'L1' }, { partId: 'C1' }] }),
  );
  const curve = { kind: 'voltage', nodes: ['w', '0'], amplifierId: 'V1' } as const;
  const lowPass = { shape: { family: 'butterworth', order: 2 }, cornerHz: 1500 } as const;
  const target = targetFor(
    curve,
    { ...flat, levelDb: 0, lowPass },
    [{ fromHz: 80, toHz: 16000, weight: 1 }],
    frequenciesHz,
  );
  const fit: FitProblem = { trial: small, targets: [target], bounds: boundsBy(small, 10), limits: NO_LIMITS };

  it('finds the handbook values of a second-order Butterworth but for the losses of the parts', () => {
    const { continuous } = succeeded(optimise(fit, options));
    // L = √2 R / ω, C = 1 / (√2 R ω), from memory; 0.3 Ω in series take off half a decibel and shift it a little.
    const omega = 2 * Math.PI * 1500;
    expect(continuous.values[0]! / ((Math.SQRT2 * 6) / omega)).toBeGreaterThan(0.9);
    expect(continuous.values[0]! / ((Math.SQRT2 * 6) / omega)).toBeLessThan(1.1);
    expect(continuous.values[1]! * Math.SQRT2 * 6 * omega).toBeGreaterThan(0.9);
    expect(continuous.values[1]! * Math.SQRT2 * 6 * omega).toBeLessThan(1.1);
  });

  it.each(['rms', 'greatest'] as const)('tries all sets within two steps, by the %s', (criterion) => {
    const choices = succeeded(preferredChoices(small, fit.bounds, { ...E12, inductor: 'E6' }));
    const { preferred, rounded, proof } = succeeded(optimise(fit, { ...options, criterion, choices }));
    expect(proof).toBe('all-tried');
    expect(meritOf(preferred!, criterion)).toBeLessThanOrEqual(meritOf(rounded!, criterion));
    // By hand: every pair of the two lists near there.
    const errors = (l: number, c: number) => {
      const levels = trialLevelsDb(succeeded(tryValues(small, Float64Array.of(l, c))), curve);
      return levels.map((x, f) => Math.abs(x - target.levelsDb[f]!));
    };
    const of = (e: Float64Array) =>
      criterion === 'rms' ? Math.sqrt(e.reduce((s, x) => s + x * x, 0) / e.length) : Math.max(...e);
    let least = Number.POSITIVE_INFINITY;
    for (const l of choices[0]!) for (const c of choices[1]!) least = Math.min(least, of(errors(l, c)));
    expect(meritOf(preferred!, criterion)).toBeCloseTo(least, 9);
  });

  it('refuses bounds that cross and targets that count nowhere, in words', () => {
    const crossed = optimise({ ...fit, bounds: [{ least: 2, greatest: 1 }, fit.bounds[1]!] }, options);
    const silent = optimise({ ...fit, targets: [{ ...target, weights: target.weights.map(() => 0) }] }, options);
    expect([crossed, silent].map((r) => (r.ok ? [] : r.problems.map(({ code }) => code)))).toEqual([
      ['optimise.bounds'],
      ['optimise.no-weight'],
    ]);
    for (const r of [crossed, silent]) if (!r.ok) expect(word(r.problems[0]!).sentence.length).toBeGreaterThan(20);
  });
});

function leastOhm(values: Float64Array): number {
  const { re, im } = trialImpedance(succeeded(tryValues(trial, values)), 'V1');
  return Math.min(...re.map((x, f) => Math.hypot(x, im[f]!)));
}

const changed = (values: Float64Array, i: number, value: number): Float64Array =>
  values.map((x, k) => (k === i ? value : x));

function weighted(x: Float64Array, { weights }: Target): number {
  return x.reduce((sum, v, f) => sum + weights[f]! * v, 0) / weights.reduce((a, b) => a + b, 0);
}
