import { describe, expect, it } from 'vitest';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import {
  type CrossoverTrial,
  crossoverTrial,
  isValued,
  sensitivityStrip,
  strongestAt,
  type TrialCurve,
  type Tried,
  trialImpedance,
  trialImpedanceDerivatives,
  trialLevelGradient,
  trialLevelsDb,
  trialPower,
  trialPowerDerivatives,
  trialSum,
  trialSumDerivatives,
  tryValues,
  withValue,
} from '../../../../src/core/design/trial/index.ts';
import { randomStream } from '../../../../src/core/math/randomStream.ts';
import { levelsDbSpl } from '../../../../src/core/speaker/complexCurve.ts';
import type { SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { simulate } from '../../../../src/core/speaker/simulate.ts';
import type { ComplexCurve } from '../../../../src/core/speaker/simulation.ts';
import { succeeded } from '../../circuit/solved.ts';
import { demoAside, demoModel, MODELS } from './trialModels.ts';

const frequenciesHz = sweepGrid(25, 18000, 60);

/** Greatest difference over the greatest magnitude; 0 where both are silent. */
function difference(ours: ComplexCurve, theirs: ComplexCurve): number {
  let greatest = 0;
  let worst = 0;
  for (let f = 0; f < ours.re.length; f++) {
    greatest = Math.max(greatest, Math.hypot(theirs.re[f]!, theirs.im[f]!));
    worst = Math.max(worst, Math.hypot(ours.re[f]! - theirs.re[f]!, ours.im[f]! - theirs.im[f]!));
  }
  return worst === 0 ? 0 : worst / greatest;
}

const modelWith = (model: SpeakerModel, trial: CrossoverTrial, values: Float64Array): SpeakerModel => ({
  ...model,
  parts: model.parts.map((part) => {
    const i = trial.variables.findIndex(({ partId }) => partId === part.id);
    return i < 0 || !isValued(part) ? part : withValue(part, values[i]!, trial.variables[i]!.dcrExponent);
  }),
});

const variablesWith = (model: SpeakerModel, dcrExponent: number) =>
  model.parts.filter(isValued).map(({ id, kind }) => ({ partId: id, ...(kind === 'inductor' && { dcrExponent }) }));

describe.each(Object.entries(MODELS))('%s', (_name, model) => {
  const trial = succeeded(crossoverTrial({ model, frequenciesHz, variables: variablesWith(model, 0.6) }));
  const random = randomStream(11);
  const elsewhere = trial.start.map((value) => value * Math.exp(0.8 * (random.uniform() - 0.5)));

  it('equals the simulation of the whole loudspeaker to 1e-9, at its own values and at others', () => {
    let tried: Tried | undefined;
    for (const values of [trial.start, elsewhere, trial.start]) {
      tried = succeeded(tryValues(trial, values, tried));
      const whole = succeeded(simulate(modelWith(model, trial, values), frequenciesHz));
      expect(difference(trialSum(tried, 0), whole.sum)).toBeLessThan(1e-9);
      for (const { id, impedance } of whole.amplifiers) {
        expect(difference(trialImpedance(tried, id), impedance)).toBeLessThan(1e-9);
      }
      expect(whole.partPowersW.size).toBeGreaterThan(5);
      for (const [id, power] of whole.partPowersW) {
        const im = new Float64Array(power.length);
        expect(difference({ re: trialPower(tried, id), im }, { re: power, im })).toBeLessThan(1e-9);
      }
    }
  });

  const STEP = 1e-5;
  /** Central differences with ln of each value. */
  function byDifferences(output: (tried: Tried) => ComplexCurve): ComplexCurve[] {
    return trial.variables.map((_, i) => {
      const at = (factor: number) =>
        output(
          succeeded(
            tryValues(
              trial,
              elsewhere.map((value, k) => (k === i ? value * factor : value)),
            ),
          ),
        );
      const [up, down] = [at(Math.exp(STEP)), at(Math.exp(-STEP))];
      return {
        re: up.re.map((x, f) => (x - down.re[f]!) / (2 * STEP)),
        im: up.im.map((x, f) => (x - down.im[f]!) / (2 * STEP)),
      };
    });
  }
  const real = (re: Float64Array): ComplexCurve => ({ re, im: new Float64Array(re.length) });
  /** Error of each derivative relative to the greatest of all at any frequency. */
  function worstOf(ours: readonly ComplexCurve[], theirs: readonly ComplexCurve[]): number {
    let greatest = 0;
    for (const { re, im } of theirs) {
      for (let f = 0; f < re.length; f++) greatest = Math.max(greatest, Math.hypot(re[f]!, im[f]!));
    }
    let worst = 0;
    ours.forEach(({ re, im }, i) => {
      for (let f = 0; f < re.length; f++) {
        worst = Math.max(worst, Math.hypot(re[f]! - theirs[i]!.re[f]!, im[f]! - theirs[i]!.im[f]!));
      }
    });
    return worst / greatest;
  }
  const tried = succeeded(tryValues(trial, elsewhere));

  it('has the derivatives of the sum and of its level that central differences have, to 1e-6', () => {
    expect(
      worstOf(
        trialSumDerivatives(tried, 0),
        byDifferences((t) => trialSum(t, 0)),
      ),
    ).toBeLessThan(1e-6);
    const curve: TrialCurve = { kind: 'sum', points: [0] };
    const { derivatives, levelsDb } = trialLevelGradient(tried, curve);
    expect(levelsDb).toEqual(trialLevelsDb(tried, curve));
    expect(Math.max(...levelsDb.map((level, f) => Math.abs(level - levelsDbSpl(trialSum(tried, 0))[f]!)))).toBeLessThan(
      1e-9,
    );
    expect(
      worstOf(
        derivatives.map(real),
        byDifferences((t) => real(trialLevelsDb(t, curve))),
      ),
    ).toBeLessThan(1e-6);
  });

  it.each(['way', 'voltage'] as const)('and of one %s', (kind) => {
    const speakerId = model.speakers[0]!.partId;
    const curve: TrialCurve =
      kind === 'way'
        ? { kind, speakerId, points: [0] }
        : { kind, nodes: trial.terminals[0]!, amplifierId: model.amplifiers[0]!.id };
    expect(
      worstOf(
        trialLevelGradient(tried, curve).derivatives.map(real),
        byDifferences((t) => real(trialLevelsDb(t, curve))),
      ),
    ).toBeLessThan(1e-6);
  });

  it('and of every impedance and power', () => {
    for (const { id } of model.amplifiers) {
      const ours = trialImpedanceDerivatives(tried, id);
      const logarithm = byDifferences((t) => {
        const { re, im } = trialImpedance(t, id);
        return { re: re.map((x, f) => Math.log(Math.hypot(x, im[f]!))), im: re.map((x, f) => Math.atan2(im[f]!, x)) };
      });
      expect(worstOf(ours, logarithm)).toBeLessThan(1e-6);
    }
    for (const id of [...trial.variables.slice(0, 4).map(({ partId }) => partId), model.speakers[0]!.partId]) {
      expect(
        worstOf(
          trialPowerDerivatives(tried, id).map(real),
          byDifferences((t) => real(trialPower(t, id))),
        ),
      ).toBeLessThan(1e-6);
    }
  });
});

describe('several listening points', () => {
  const aside = demoAside();
  const trial = succeeded(crossoverTrial({ model: demoModel(), frequenciesHz, heard: [demoModel(), aside] }));
  const tried = succeeded(tryValues(trial, trial.start));

  it('each equals the simulation from there', () => {
    expect(difference(trialSum(tried, 1), succeeded(simulate(aside, frequenciesHz)).sum)).toBeLessThan(1e-9);
    expect(difference(trialSum(tried, 1), trialSum(tried, 0))).toBeGreaterThan(1e-3);
  });

  it('a curve over both is the mean of their squares, with its derivatives', () => {
    const both: TrialCurve = { kind: 'sum', points: [0, 1] };
    const [a, b] = [0, 1].map((point) => trialLevelsDb(tried, { kind: 'sum', points: [point] }));
    const { levelsDb, derivatives } = trialLevelGradient(tried, both);
    levelsDb.forEach((level, f) => {
      expect(level).toBeCloseTo(10 * Math.log10((10 ** (a![f]! / 10) + 10 ** (b![f]! / 10)) / 2), 9);
    });
    const STEP = 1e-5;
    const moved = (factor: number) =>
      trialLevelsDb(
        succeeded(
          tryValues(
            trial,
            trial.start.map((x, i) => (i === 3 ? x * factor : x)),
          ),
        ),
        both,
      );
    const [up, down] = [moved(Math.exp(STEP)), moved(Math.exp(-STEP))];
    up.forEach((x, f) => {
      expect(Math.abs(derivatives[3]![f]! - (x - down[f]!) / (2 * STEP))).toBeLessThan(1e-6 * 8.7);
    });
  });

  it('the strip ranks parts by what they do in a band', () => {
    const curve: TrialCurve = { kind: 'sum', points: [0] };
    const high = sensitivityStrip(tried, curve, { fromHz: 5000, toHz: 18000 });
    const low = sensitivityStrip(tried, curve, { fromHz: 30, toHz: 150 });
    const isTweeters = (id: string) => ['C5', 'L4', 'C6', 'R4', 'C8', 'R5'].includes(id);
    expect(isTweeters(high[0]!.partId)).toBe(true);
    expect(low.slice(0, 2).some(({ partId }) => isTweeters(partId))).toBe(false);
    expect(high.map(({ rmsDbPerLn }) => rmsDbPerLn)).toEqual(high.map((one) => one.rmsDbPerLn).sort((x, y) => y - x));
    expect(strongestAt(high, 59)).toHaveLength(trial.variables.length);
    // 1 % more, by the definition and by trying.
    const first = high[0]!;
    const i = trial.variables.findIndex(({ partId }) => partId === first.partId);
    const more = succeeded(
      tryValues(
        trial,
        trial.start.map((x, k) => (k === i ? x * 1.01 : x)),
      ),
    );
    const change = trialLevelsDb(more, curve)[58]! - trialLevelsDb(tried, curve)[58]!;
    expect(Math.abs(change - first.dbPerLn[58]! * Math.log(1.01))).toBeLessThan(0.002);
  });
});

describe('what is no trial', () => {
  it('throws for parts that have no value, and for values that are none', () => {
    const model = demoModel();
    expect(() => crossoverTrial({ model, frequenciesHz, variables: [{ partId: 'J1' }] })).toThrow(/J1/);
    const trial = succeeded(crossoverTrial({ model, frequenciesHz }));
    expect(() =>
      tryValues(
        trial,
        trial.start.map(() => 0),
      ),
    ).toThrow(/No value/);
    expect(() => trialSum(succeeded(tryValues(trial, trial.start)), 4)).toThrow(/no listening point 4/);
  });
});
