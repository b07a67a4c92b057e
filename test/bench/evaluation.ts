import { evaluateProject } from '../../src/core/design/evaluateProject.ts';
import { laterChecks } from '../../src/core/design/findings/later.ts';
import { sweepGrid } from '../../src/core/design/sweepGrid.ts';
import type { Project } from '../../src/core/document/schema.ts';
import type { Result } from '../../src/core/messages/problem.ts';
import { readModel } from '../../src/core/speaker/readModel.ts';
import { simulate } from '../../src/core/speaker/simulate.ts';
import { demoA } from './demo.ts';
import { figure, type Measured } from './figure.ts';
import { median, quantile } from './statistics.ts';

const WARM_UP_RUNS = 150;
const RUNS = 300;

const need = <T>(result: Result<T>): T => {
  if (!result.ok)
    throw new Error(`Demo (a) cannot be evaluated: ${result.problems.map(({ code }) => code).join(', ')}`);
  return result.value;
};

/** Milliseconds of each of the timed runs, after those that let the compiler warm up. */
const timed = (run: () => void): number[] => {
  for (let i = 0; i < WARM_UP_RUNS; i++) run();
  return Array.from({ length: RUNS }, () => {
    const started = performance.now();
    run();
    return performance.now() - started;
  });
};

/**
 * One full evaluation of demo (a) at 1000 frequencies: from the document through the solve to input impedance, part
 * powers, excursions, port speeds and the sum at one point. Nothing is taken over from the run before.
 */
export function evaluationFigures(): Measured {
  const project = demoA();
  const frequenciesHz = sweepGrid(20, 20000, 1000);
  let last = 0;
  const whole = timed(() => {
    const simulation = need(simulate(need(readModel(project)).model, frequenciesHz));
    last = Math.hypot(simulation.sum.re.at(-1)!, simulation.sum.im.at(-1)!);
  });
  if (!(last > 0)) throw new Error('The evaluation of demo (a) gave no sound.');
  // Two documents in turn, so that nothing can be remembered of the one before; with key figures and findings.
  const turns: readonly Project[] = [project, { ...project, name: `${project.name} 2` }];
  let turn = 0;
  const screen = timed(() => {
    need(evaluateProject(turns[turn++ % 2]!, undefined, laterChecks));
  });
  return {
    figures: [figure('evaluation-median-ms', median(whole)), figure('evaluation-p95-ms', quantile(whole, 0.95))],
    notes: [
      `one full evaluation, ${frequenciesHz.length} frequencies, ${project.network.parts.length} parts, ${RUNS} runs: ` +
        `median ${median(whole).toFixed(2)} ms, p95 ${quantile(whole, 0.95).toFixed(2)} ms`,
      `the same with key figures and findings, as the screen asks for it: median ${median(screen).toFixed(2)} ms, ` +
        `p95 ${quantile(screen, 0.95).toFixed(2)} ms`,
    ],
  };
}
