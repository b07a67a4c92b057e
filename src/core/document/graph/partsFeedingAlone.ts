import { RETURN } from '../../circuit/branch.ts';
import type { Part } from '../../circuit/part.ts';
import { reachable } from './reachable.ts';

/**
 * The parts that serve one speaker and no other, the speaker itself left out: the largest piece of the circuit that
 * holds the speaker, no other speaker and no amplifier, and hangs on the rest by one node and the return. A channel
 * of several that feeds this speaker alone belongs to it too. Empty when the speaker stands in series with another.
 */
export function partsFeedingAlone(parts: readonly Part[], speaker: Part): Part[] {
  const ground = new Set([RETURN]);
  const hot = speaker.nodes[0] === RETURN ? speaker.nodes[1] : speaker.nodes[0];
  const pieceFrom = (barred: ReadonlySet<string>): Part[] => {
    const inside = reachable(parts, hot, barred);
    return parts.filter((part) => part !== speaker && part.nodes.some((node) => inside.has(node)));
  };
  const ofOthers = (part: Part) => part.kind === 'speaker';

  const whole = pieceFrom(ground);
  const amplifiers = parts.filter((part) => part.kind === 'amplifier');
  const ownChannels = whole.filter((part) => part.kind === 'amplifier').length;
  if (!whole.some(ofOthers) && ownChannels < amplifiers.length) return whole;

  let largest: Part[] = [];
  for (const node of new Set(parts.flatMap((part) => part.nodes))) {
    if (node === RETURN || node === hot) continue;
    const piece = pieceFrom(new Set([RETURN, node]));
    if (piece.some((part) => ofOthers(part) || part.kind === 'amplifier')) continue;
    if (piece.length > largest.length) largest = piece;
  }
  return largest;
}
