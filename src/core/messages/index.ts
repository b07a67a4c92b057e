export * from './problem.ts';
export * from './word.ts';
