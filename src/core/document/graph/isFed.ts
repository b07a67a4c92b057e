import type { Part } from '../../circuit/part.ts';
import { reachable } from './reachable.ts';

/**
 * Whether a speaker can carry current: some amplifier lies on a closed path through it. Two edges lie on one closed
 * path when no single node parts them (Menger; K. Menger, "Zur allgemeinen Kurventheorie", 1927, from memory).
 */
export function isFed(parts: readonly Part[], speakerId: string): boolean {
  const speaker = parts.find((part) => part.id === speakerId);
  if (!speaker) return false;
  const nodes = [...new Set(parts.flatMap((part) => part.nodes))];
  return parts.some(
    (part) => part.kind === 'amplifier' && nodes.every((cut) => joinedWithout(parts, cut, speaker.nodes, part.nodes)),
  );
}

function joinedWithout(parts: readonly Part[], cut: string, a: readonly string[], b: readonly string[]): boolean {
  const start = a.find((node) => node !== cut);
  if (start === undefined) return false;
  const found = reachable(parts, start, new Set([cut]));
  return b.some((node) => found.has(node));
}
