import {
  buildPairs,
  type CrossoverTrial,
  crossoverTrial,
  modelsHeard,
  optimise,
  preferredChoices,
  sweepGrid,
  type TrialVariable,
  targetFor,
} from '../core/design/index.ts';
import { type Result, succeed } from '../core/messages/problem.ts';
import type { CrossoverAnswer, CrossoverJob, OptimiseJob, ToleranceJob } from './crossoverJob.ts';

/** Pairs in one piece: about a fifth of a second of work. */
const PIECE = 500;

/**
 * Carries out a job on a crossover and posts what it finds on the way.
 * @example answerCrossover(job, (answer) => self.postMessage(answer))
 */
export function answerCrossover(job: CrossoverJob, post: (answer: CrossoverAnswer) => void): void {
  if (job.kind === 'optimise') post({ kind: 'optimised', result: optimised(job, post) });
  else post({ kind: 'all-built', result: allBuilt(job, post) });
}

function trialOf(job: CrossoverJob, variables?: readonly TrialVariable[]): Result<CrossoverTrial> {
  const heard = modelsHeard(job.project, job.angles);
  if (!heard.ok) return heard;
  const [model] = heard.value;
  if (model === undefined) throw new RangeError('A crossover is heard from one angle at least.');
  const { fromHz, toHz, count } = job.sweep;
  const frequenciesHz = sweepGrid(fromHz, toHz, count);
  return crossoverTrial({ model, heard: heard.value, frequenciesHz, ...(variables && { variables }) });
}

function optimised(job: OptimiseJob, post: (answer: CrossoverAnswer) => void) {
  const trial = trialOf(job, job.variables);
  if (!trial.ok) return trial;
  const choices = job.stocks === null ? succeed(null) : preferredChoices(trial.value, job.variables, job.stocks);
  if (!choices.ok) return choices;
  const targets = job.targets.map(({ curve, shape, bands }) =>
    targetFor(curve, shape, bands, trial.value.frequenciesHz),
  );
  const { starts, seed, criterion, limits, variables } = job;
  return optimise(
    { trial: trial.value, targets, bounds: variables, limits },
    { starts, seed, criterion, choices: choices.value },
    { onProgress: (progress) => post({ kind: 'progress', progress }) },
  );
}

function allBuilt(job: ToleranceJob, post: (answer: CrossoverAnswer) => void): Result<null> {
  const trial = trialOf(job);
  if (!trial.ok) return trial;
  for (let done = 0; done < job.pairs; done += PIECE) {
    const pairs = Math.min(PIECE, job.pairs - done);
    const built = buildPairs(trial.value, job.spec, job.curve, { first: job.first + done, pairs });
    if (!built.ok) return built;
    post({ kind: 'built', built: built.value, share: (done + pairs) / job.pairs });
  }
  return succeed(null);
}
