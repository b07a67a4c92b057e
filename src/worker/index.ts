export * from './answerCrossover.ts';
export * from './answerCutting.ts';
export type * from './crossoverJob.ts';
export type * from './cuttingJob.ts';
