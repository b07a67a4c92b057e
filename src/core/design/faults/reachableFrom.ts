import { RETURN } from '../../circuit/branch.ts';
import type { Part } from '../../circuit/part.ts';

/** Ids of the parts that hang together with a node without going through the return or through an amplifier. */
export function reachableFrom(parts: readonly Part[], node: string): ReadonlySet<string> {
  const nodes = new Set([node]);
  const found = new Set<string>();
  for (let grown = true; grown; ) {
    grown = false;
    for (const part of parts) {
      if (part.kind === 'amplifier' || found.has(part.id) || !part.nodes.some((n) => nodes.has(n))) continue;
      found.add(part.id);
      for (const n of part.nodes) if (n !== RETURN) nodes.add(n);
      grown = true;
    }
  }
  return found;
}
