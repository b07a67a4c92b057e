import { fork } from 'node:child_process';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import {
  boundsAround,
  crossoverTrial,
  modelsHeard,
  NO_LIMITS,
  optimise,
  pairStatistics,
  preferredChoices,
  sweepGrid,
  targetFor,
} from '../../src/core/design/index.ts';
import type { Result } from '../../src/core/messages/problem.ts';
import { simulate } from '../../src/core/speaker/simulate.ts';
import type { ToleranceJob } from '../../src/worker/index.ts';
import type { CrossoverReply } from './crossoverProcess.ts';
import { demoA } from './demo.ts';
import { figure, type Measured } from './figure.ts';
import { median, spread } from './statistics.ts';

const RUNS = 5;
const BUILDS = 10_000;
const FREQUENCIES = 200;

const need = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problems.map(({ code }) => code).join(', '));
  return result.value;
};

/**
 * Every part of demo (a) brought to a flat sum with preferred values, and ten thousand loudspeakers built from parts of 5 %;
 * each beside the time that the same work would take by one simulation of the whole loudspeaker after the other, with finite
 * differences in the place of derivatives: the number of simulations times the measured time of one.
 */
export async function crossoverFigures(): Promise<Measured> {
  const [model] = need(modelsHeard(demoA(), [{ horizontalDeg: 0, verticalDeg: 0 }]));
  const search = searchSeconds();
  const builds = await buildSeconds();
  const frequenciesHz = sweepGrid(20, 20000, FREQUENCIES);
  const simulations: number[] = [];
  for (let i = 0; i < 150; i++) {
    const started = performance.now();
    need(simulate(model!, frequenciesHz));
    if (i >= 50) simulations.push((performance.now() - started) / 1000);
  }
  const one = median(simulations);
  const searched = median(search.seconds);
  const built = median(builds.seconds);
  return {
    figures: [
      figure('optimise-s', searched),
      figure('optimise-vs-differences', (search.simulations * one) / searched),
      figure('builds-s', built),
      figure('builds-vs-simulation', (BUILDS * one) / built),
    ],
    notes: [
      `${search.note}: ${spread(search.seconds, 's')}`,
      `${BUILDS} builds at ${FREQUENCIES} frequencies on ${builds.processes} processes, statistics included: ${spread(builds.seconds, 's')}`,
      `one simulation of the whole loudspeaker at ${FREQUENCIES} frequencies: ${(1000 * one).toFixed(2)} ms`,
    ],
  };
}

function searchSeconds() {
  const seconds: number[] = [];
  let simulations = 0;
  let note = '';
  for (let run = 0; run < RUNS; run++) {
    const started = performance.now();
    const [model] = need(modelsHeard(demoA(), [{ horizontalDeg: 0, verticalDeg: 0 }]));
    const frequenciesHz = sweepGrid(20, 20000, FREQUENCIES);
    const trial = need(crossoverTrial({ model: model!, frequenciesHz }));
    const bounds = boundsAround(trial, 5);
    const choices = need(preferredChoices(trial, bounds, { resistor: 'E12', capacitor: 'E12', inductor: 'E12' }));
    const target = targetFor(
      { kind: 'sum', points: [0] },
      { levelDb: null, tiltDbPerOctave: 0, pivotHz: 1000, highPass: null, lowPass: null },
      [{ fromHz: 150, toHz: 15000, weight: 1 }],
      frequenciesHz,
    );
    const { start, rounded, preferred, ending } = need(
      optimise(
        { trial, targets: [target], bounds, limits: NO_LIMITS },
        { starts: 12, seed: 1, criterion: 'rms', choices },
      ),
    );
    seconds.push((performance.now() - started) / 1000);
    simulations = ending.evaluations + ending.gradients * trial.variables.length;
    note =
      `${trial.variables.length} parts at ${FREQUENCIES} frequencies, 12 starts, E12: ${start.rmsDb.toFixed(2)} dB rms to ` +
      `${preferred!.rmsDb.toFixed(3)} dB (plain rounding ${rounded!.rmsDb.toFixed(3)} dB), ${ending.evaluations} designs`;
  }
  return { seconds, simulations, note };
}

async function buildSeconds() {
  const processes = Math.min(2, cpus().length);
  const project = demoA();
  const parts = project.network.parts.flatMap(({ id, kind }) =>
    kind === 'resistor' || kind === 'capacitor' || kind === 'inductor' ? [id] : [],
  );
  const half = Math.ceil(BUILDS / 2 / processes);
  const jobs = Array.from(
    { length: processes },
    (_, k): ToleranceJob => ({
      kind: 'tolerance',
      project,
      angles: [{ horizontalDeg: 0, verticalDeg: 0 }],
      sweep: { fromHz: 20, toHz: 20000, count: FREQUENCIES },
      spec: {
        seed: 1,
        parts: parts.map((partId) => ({
          partId,
          tolerance: 0.05,
          spread: { kind: 'normal', sigmas: 3 },
          matchedWithin: null,
        })),
      },
      curve: { kind: 'sum', points: [0] },
      first: k * half,
      pairs: half,
    }),
  );
  const children = jobs.map(() =>
    fork(fileURLToPath(new URL('./crossoverProcess.ts', import.meta.url)), {
      execArgv: ['--import', 'tsx'],
      serialization: 'advanced',
    }),
  );
  const replies = () =>
    Promise.all(
      children.map(
        (child) =>
          new Promise<CrossoverReply>((resolve, reject) => {
            child.once('message', resolve);
            child.once('exit', (code) => reject(new Error(`a process ended with code ${code}`)));
          }),
      ),
    );
  try {
    // Each says that it has loaded; a first round then warms up the compiler.
    await replies();
    const seconds: number[] = [];
    for (let run = 0; run < 4; run++) {
      const started = performance.now();
      const answers = replies();
      children.forEach((child, k) => {
        child.send(jobs[k]!);
      });
      const built = (await answers).flatMap(({ pieces }) => pieces);
      const statistics = pairStatistics(built, sweepGrid(20, 20000, FREQUENCIES), [0.05, 0.5, 0.95], {
        fromHz: 200,
        toHz: 10000,
        withinDb: 1,
        levelIsFree: false,
      });
      if (2 * statistics.pairs < BUILDS) throw new Error(`only ${statistics.pairs} pairs were built`);
      if (run > 0) seconds.push((performance.now() - started) / 1000);
    }
    return { seconds, processes };
  } finally {
    for (const child of children) child.kill();
  }
}
