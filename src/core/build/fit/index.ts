export type { Interference, InterferenceRemedy } from './interference.ts';
export * from './interferences.ts';

/** Wood that should be left beside a cut-out, m. Common practice, no source. */
export const USUAL_WEB_M = 0.008;
