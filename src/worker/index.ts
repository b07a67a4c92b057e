export * from './answerCutting.ts';
export type * from './cuttingJob.ts';
