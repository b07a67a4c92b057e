import { defaultAmplifier } from '../defaults.ts';
import type { Chain } from '../schema.ts';

/** Settings of one more amplifier channel: those of the first one, since channels of one make are the usual case. */
export const settingsFor = (chain: Chain, id: string): Chain['amplifiers'][number] => ({
  ...(chain.amplifiers[0] ?? defaultAmplifier),
  id,
});
