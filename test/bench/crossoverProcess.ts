// The other side of crossover.ts: carries out tolerance jobs, one at a time, and says at first that it has loaded.
import type { BuiltPairs } from '../../src/core/design/index.ts';
import { answerCrossover, type ToleranceJob } from '../../src/worker/index.ts';

export interface CrossoverReply {
  readonly pieces: readonly BuiltPairs[];
}

const reply = (message: CrossoverReply): void => {
  process.send?.(message);
};

process.on('message', (job: ToleranceJob) => {
  const pieces: BuiltPairs[] = [];
  answerCrossover(job, (answer) => {
    if (answer.kind === 'built') pieces.push(answer.built);
    if (answer.kind === 'all-built' && !answer.result.ok) throw new Error(answer.result.problems[0]?.code);
  });
  reply({ pieces });
});
reply({ pieces: [] });
