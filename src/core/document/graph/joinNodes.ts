import { RETURN } from '../../circuit/branch.ts';
import type { Part } from '../../circuit/part.ts';
import { isFreshName } from './freshNodes.ts';

/**
 * The name that two joined nodes keep, whichever way round they are given: the return, else an amplifier's output,
 * else a name that a person chose, else the lower in order of letters and numbers.
 */
export function keptNode(parts: readonly Part[], a: string, b: string): string {
  const outputs = new Set(parts.filter((part) => part.kind === 'amplifier').map((part) => part.nodes[0]));
  const rank = (node: string) => (node === RETURN ? 0 : outputs.has(node) ? 1 : isFreshName(node) ? 3 : 2);
  if (rank(a) !== rank(b)) return rank(a) < rank(b) ? a : b;
  if (isFreshName(a)) return Number(a.slice(1)) <= Number(b.slice(1)) ? a : b;
  return a <= b ? a : b;
}

/** The parts with nodes `a` and `b` made one; parts that end on neither stay identical. */
export function joinNodes(parts: readonly Part[], a: string, b: string): Part[] {
  const kept = keptNode(parts, a, b);
  const gone = kept === a ? b : a;
  return parts.map((part) => (part.nodes.includes(gone) ? renameNode(part, gone, kept) : part));
}

const renameNode = <T extends Part>(part: T, from: string, to: string): T => {
  const [first, second] = part.nodes;
  return { ...part, nodes: [first === from ? to : first, second === from ? to : second] };
};
