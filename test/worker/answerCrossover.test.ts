import { describe, expect, it } from 'vitest';
import { pairStatistics, preferredChoices, sweepGrid } from '../../src/core/design/index.ts';
import { crossoverTrial, isValued, partValue } from '../../src/core/design/trial/index.ts';
import type { CrossoverAnswer, CrossoverJob, OptimiseJob } from '../../src/worker/index.ts';
import { answerCrossover } from '../../src/worker/index.ts';
import { succeeded } from '../core/circuit/solved.ts';
import { demoProject } from '../core/design/demoProject.ts';
import { demoModel } from '../core/design/trial/trialModels.ts';

const project = demoProject('reading-room');
const parts = project.network.parts.filter(isValued);
const sweep = { fromHz: 100, toHz: 15000, count: 30 };
const optimiseJob: OptimiseJob = {
  kind: 'optimise',
  project,
  angles: [
    { horizontalDeg: 0, verticalDeg: 0 },
    { horizontalDeg: 20, verticalDeg: 0 },
  ],
  sweep,
  variables: parts.map((part) => ({ partId: part.id, least: partValue(part) / 4, greatest: partValue(part) * 4 })),
  targets: [
    {
      curve: { kind: 'sum', points: [0, 1] },
      shape: { levelDb: null, tiltDbPerOctave: -0.3, pivotHz: 1000, highPass: null, lowPass: null },
      bands: [{ fromHz: 150, toHz: 12000, weight: 1 }],
    },
  ],
  limits: { leastImpedances: [{ amplifierId: 'V1', ohm: 3 }], greatestPowers: [], cost: null },
  stocks: { resistor: 'E12', capacitor: 'E12', inductor: 'E12' },
  starts: 2,
  seed: 1,
  criterion: 'rms',
};

/** Everything that is posted, as it arrives on the other side. */
function answersTo(job: CrossoverJob): CrossoverAnswer[] {
  const answers: CrossoverAnswer[] = [];
  answerCrossover(structuredClone(job), (answer) => answers.push(structuredClone(answer)));
  return answers;
}

describe('answerCrossover', () => {
  it('optimises a document’s crossover, telling of the best values on the way', () => {
    const answers = answersTo(optimiseJob);
    const last = answers.at(-1);
    if (last?.kind !== 'optimised') throw new Error('no outcome');
    const { start, preferred, rounded, ending } = succeeded(last.result);
    expect(preferred!.rmsDb).toBeLessThan(start.rmsDb);
    expect(preferred!.rmsDb).toBeLessThanOrEqual(rounded!.rmsDb);
    expect(ending.keepsLimits).toBe(true);
    const trial = succeeded(crossoverTrial({ model: demoModel(), frequenciesHz: sweepGrid(100, 15000, 30) }));
    const choices = succeeded(preferredChoices(trial, optimiseJob.variables, optimiseJob.stocks!));
    preferred!.values.forEach((value, i) => {
      expect(choices[i]).toContain(value);
    });
    const told = answers.flatMap((answer) => (answer.kind === 'progress' ? [answer.progress] : []));
    expect(told.length).toBe(answers.length - 1);
    expect(told.at(-1)!.best).toEqual(preferred);
  });

  it('builds pairs in pieces that come to the same however they are shared out', () => {
    const tolerance: CrossoverJob = {
      kind: 'tolerance',
      project,
      angles: [{ horizontalDeg: 0, verticalDeg: 0 }],
      sweep,
      spec: {
        seed: 7,
        parts: parts.map(({ id }) => ({
          partId: id,
          tolerance: 0.05,
          spread: { kind: 'uniform' },
          matchedWithin: null,
        })),
      },
      curve: { kind: 'sum', points: [0] },
      first: 0,
      pairs: 700,
    };
    const built = (job: CrossoverJob) =>
      answersTo(job).flatMap((answer) => (answer.kind === 'built' ? [answer.built] : []));
    const whole = built(tolerance);
    expect(whole.map(({ pairs }) => pairs)).toEqual([500, 200]);
    const halves = [...built({ ...tolerance, pairs: 350 }), ...built({ ...tolerance, first: 350, pairs: 350 })];
    const window = { fromHz: 200, toHz: 10000, withinDb: 0.7, levelIsFree: false };
    const of = (pieces: typeof whole) => pairStatistics(pieces, sweepGrid(100, 15000, 30), [0.05, 0.95], window);
    expect(of(halves)).toEqual(of(whole));
    expect(answersTo({ ...tolerance, pairs: 1 }).at(-1)).toEqual({
      kind: 'all-built',
      result: { ok: true, value: null },
    });
  });

  it('hands on what is wrong with the document', () => {
    const broken = { ...project, enclosure: { ...project.enclosure, panelM: 5 } };
    const [answer, ...more] = answersTo({ ...optimiseJob, project: broken });
    expect(more).toEqual([]);
    expect(answer?.kind === 'optimised' && !answer.result.ok && answer.result.problems[0]?.code).toBe(
      'speaker.no-inside',
    );
  });
});
