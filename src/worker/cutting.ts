import { answerCutting } from './answerCutting.ts';
import type { CuttingJob } from './cuttingJob.ts';

// The worker's own file: one job, its answers, and whoever asked ends it.
self.addEventListener('message', (event: MessageEvent<CuttingJob>) => {
  answerCutting(event.data, (answer) => self.postMessage(answer));
});
