import type { Listening } from '../core/document/schema.ts';

/** The radiation views in words, as a condition of whatever is told in dB. */
export const radiationWords: Readonly<Record<Listening['radiation'], string>> = {
  'baffle-step': 'on its own baffle',
  'half-space': 'half space',
  'full-space': 'full space',
};
