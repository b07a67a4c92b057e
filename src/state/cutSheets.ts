import type { CuttingAnswer, CuttingJob } from '../worker/cuttingJob.ts';

export type { CuttingAnswer, CuttingJob } from '../worker/cuttingJob.ts';

/** Has a job laid out elsewhere and tells what comes of it; the function that it returns ends the job, after which nothing more is heard. */
export type CutSheets = (job: CuttingJob, hear: (answer: CuttingAnswer) => void) => () => void;
