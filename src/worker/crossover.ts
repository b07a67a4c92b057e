import { answerCrossover } from './answerCrossover.ts';
import type { CrossoverJob } from './crossoverJob.ts';

// The worker's own file: one job, its answers, and whoever asked ends it.
self.addEventListener('message', (event: MessageEvent<CrossoverJob>) => {
  answerCrossover(event.data, (answer) => self.postMessage(answer));
});
