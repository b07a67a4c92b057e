import { RETURN } from '../../../core/circuit/branch.ts';
import type { Part } from '../../../core/circuit/part.ts';

/** All nodes of a circuit in the order in which its parts name them, the return last. */
export function nodesInOrder(parts: readonly Pick<Part, 'nodes'>[]): string[] {
  const nodes = new Set(parts.flatMap((part) => part.nodes));
  const hasReturn = nodes.delete(RETURN);
  return hasReturn ? [...nodes, RETURN] : [...nodes];
}
