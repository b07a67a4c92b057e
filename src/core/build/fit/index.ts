export type { Interference, InterferenceRemedy } from './interference.ts';
export * from './interferences.ts';
