import type { Panel } from '../../../core/build/panels/index.ts';

const WORDS: Readonly<Record<Panel['grain'], string>> = {
  up: 'upright',
  across: 'side to side',
  backwards: 'front to back',
};

/** Which way the grain, and with it the first size, runs as the panel stands in the cabinet. */
export const grainWords = (grain: Panel['grain'], grained: boolean): string =>
  grained ? WORDS[grain] : `no matter (length is ${WORDS[grain]})`;
