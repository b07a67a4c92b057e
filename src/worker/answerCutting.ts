import { layOutSheets } from '../core/build/sheets/index.ts';
import type { CuttingAnswer, CuttingJob } from './cuttingJob.ts';

/**
 * Lays out every group of a job and posts what it finds: quick layouts first, so that there is something to look at and to stop with.
 *
 * @example answerCutting(job, (answer) => self.postMessage(answer))
 */
export function answerCutting(job: CuttingJob, post: (answer: CuttingAnswer) => void): void {
  const { groups, stock, kerfM, trimM, seed, effort } = job;
  const options = { kerfM, trimM, seed };
  const open: number[] = [];
  groups.forEach((parts, group) => {
    const layout = layOutSheets(parts, [stock], { ...options, effort: 0 });
    post({ kind: 'layout', group, layout });
    if (layout.ok && !layout.value.provedOptimal) open.push(group);
  });
  open.forEach((group, nth) => {
    post({ kind: 'progress', share: nth / open.length });
    const layout = layOutSheets(groups[group]!, [stock], {
      ...options,
      effort,
      onProgress: ({ round, rounds }) => post({ kind: 'progress', share: (nth + round / rounds) / open.length }),
    });
    post({ kind: 'layout', group, layout });
  });
  post({ kind: 'done' });
}
