import type { KeyFigures } from '../../../../core/design/evaluation.ts';

export type Concern = 'quiet' | 'watch' | 'audible';
type Speed = KeyFigures['portSpeeds'][number];

const WORDS: Readonly<Record<Concern, string>> = {
  quiet: 'quiet',
  watch: 'may be heard',
  audible: 'likely heard',
};
const WORST: readonly Concern[] = ['audible', 'watch', 'quiet'];

/** How far the air in a port is to be worried about at the set drive: by its speed and, at rounded ends, its stroke. */
export function portAirWords({ peakMPerS, carefulMPerS, loudMPerS, stroke }: Speed): {
  readonly concern: Concern;
  readonly words: string;
} {
  const bySpeed: Concern = peakMPerS > loudMPerS ? 'audible' : peakMPerS > carefulMPerS ? 'watch' : 'quiet';
  const all = [bySpeed, stroke?.concern ?? 'quiet'];
  const concern = WORST.find((one) => all.includes(one)) ?? 'quiet';
  return { concern, words: WORDS[concern] };
}
