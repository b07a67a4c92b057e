import { describe, expect, it } from 'vitest';
import { type Candidate, fitHypothesis } from '../../../../src/core/design/faults/candidate.ts';
import type { Fault } from '../../../../src/core/design/faults/fault.ts';
import { rebuilt } from '../../../../src/core/design/faults/hypothesis.ts';
import { singleFaults } from '../../../../src/core/design/faults/singleFaults.ts';
import { responseCheck } from '../../../../src/core/design/faults/takenResponse.ts';
import { randomStream } from '../../../../src/core/math/index.ts';
import { levelsDbSpl } from '../../../../src/core/speaker/complexCurve.ts';
import type { SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { simulate } from '../../../../src/core/speaker/simulate.ts';
import { plantFault } from '../../../faults/plantFault.ts';
import { demoHypothesis } from './demoBuild.ts';

const { model, healthy } = demoHypothesis('reading-room', 24);
// One reading in each sixth of an octave, at its middle, so that none is a mean.
const HZ = Float64Array.from({ length: 49 }, (_, k) => 1000 * 2 ** ((k - 24) / 6));
const levels = (of: SpeakerModel): Float64Array => {
  const simulation = simulate(of, HZ);
  if (!simulation.ok) throw new Error(JSON.stringify(simulation.problems));
  return levelsDbSpl(simulation.value.sum);
};
/** A hypothesis with all values as designed. */
const nominal = (faults: readonly Fault[]): Candidate => {
  const hypothesis = rebuilt(healthy, faults, model);
  const data = {
    omegas: healthy.build.omegas,
    logSizes: healthy.build.omegas.map(() => 2),
    phasesRad: null,
    noise: 1,
  };
  const fit = fitHypothesis({ ...hypothesis, wild: [] }, data, new Map(), { perStart: 0, more: 0, mostStarts: 1 });
  return { hypothesis, logPrior: 0, fit };
};
const checkOf = (levelsDb: Float64Array, of: SpeakerModel = model) => {
  const check = responseCheck({ frequenciesHz: HZ, levelsDb, model: of }, 'V1', healthy.unknowns);
  if (!check.ok) throw new Error(JSON.stringify(check.problems));
  return check.value;
};

describe('a taken response', () => {
  it('is compared with what the whole simulation gives, healthy and with faults put in by other means', () => {
    const check = checkOf(levels(model));
    const random = randomStream(3);
    const faults = singleFaults(model, healthy.build).filter(({ kind }) =>
      ['driver-reversed', 'driver-open', 'part-open', 'port-blocked', 'exchanged'].includes(kind),
    );
    expect(faults.length).toBeGreaterThan(30);
    for (const fault of faults) {
      const expected = levels(plantFault(model, fault, random));
      const got = check.levelsDbOf(nominal([fault]));
      // Open parts are 1 GΩ there and nothing here, which shows where a speaker is as good as silent.
      expected.forEach((level, f) => {
        if (level > 20) expect(Math.abs(level - got[f]!), JSON.stringify(fault)).toBeLessThan(0.01);
      });
    }
    expect(
      Math.max(...levels(model).map((level, f) => Math.abs(level - check.levelsDbOf(nominal([]))[f]!))),
    ).toBeLessThan(1e-4);
  });

  it('has the filter before the amplifier in it', () => {
    const half: SpeakerModel = {
      ...model,
      amplifiers: model.amplifiers.map((amplifier) => ({
        ...amplifier,
        drive: (omegas, re, im) => {
          re.fill(0);
          for (let f = 0; f < omegas.length; f++) im[f] = 0.5;
        },
      })),
    };
    const check = checkOf(levels(half), half);
    const got = check.levelsDbOf(nominal([]));
    levels(half).forEach((level, f) => {
      expect(Math.abs(level - got[f]!)).toBeLessThan(1e-4);
    });
  });

  it('speaks for the driver that is turned round, and hardly about a level that is off', () => {
    const reversed: Fault = { kind: 'driver-reversed', partId: 'LS3' };
    const heard = levels(plantFault(model, reversed, randomStream(1)));
    const check = checkOf(heard);
    expect(check.costOf(nominal([])) - check.costOf(nominal([reversed]))).toBeGreaterThan(20);
    const louder = checkOf(heard.map((level) => level + 3));
    expect(louder.costOf(nominal([reversed])) - check.costOf(nominal([reversed]))).toBeCloseTo(1, 6);
  });
});
