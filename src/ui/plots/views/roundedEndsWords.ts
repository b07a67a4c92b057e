import type { KeyFigures } from '../../../core/design/evaluation.ts';

/** What guidance says of a port with well rounded ends at the set drive, by its speed and by its stroke; no numbers, so that it stays still. */
export function roundedEndsWords({
  peakMPerS,
  carefulMPerS,
  loudMPerS,
  stroke,
}: KeyFigures['portSpeeds'][number]): string {
  const concern = stroke?.concern ?? 'quiet';
  if (peakMPerS > loudMPerS) return 'likely heard, by its speed';
  if (concern === 'audible') return 'likely heard, by its stroke';
  if (peakMPerS > carefulMPerS) return 'may be heard, by its speed';
  return concern === 'watch' ? 'may be heard, by its stroke' : 'quiet';
}
