import type { Part } from '../../circuit/part.ts';

/** The first `count` names n1, n2 ... that no part of the circuit uses. */
export function freshNodes(parts: readonly Pick<Part, 'nodes'>[], count: number): string[] {
  const taken = new Set(parts.flatMap((part) => part.nodes).map((node) => node.toLowerCase()));
  const fresh: string[] = [];
  for (let k = 1; fresh.length < count; k++) {
    if (!taken.has(`n${k}`)) fresh.push(`n${k}`);
  }
  return fresh;
}

/** Whether a node's name is one of those that `freshNodes` gives out. */
export const isFreshName = (node: string): boolean => /^n\d+$/i.test(node);
