import { type Branch, RETURN } from './branch.ts';

/** The node names of one branch: two, or four of a gyrator. */
export const branchNodes = (branch: Branch): readonly string[] =>
  branch.kind === 'gyrator' ? [...branch.primary, ...branch.secondary] : branch.nodes;

/** Every node of a circuit in order of appearance, the return left out. */
export function nodesOf(branches: readonly Branch[]): string[] {
  const seen = new Set<string>();
  for (const branch of branches) for (const node of branchNodes(branch)) if (node !== RETURN) seen.add(node);
  return [...seen];
}
