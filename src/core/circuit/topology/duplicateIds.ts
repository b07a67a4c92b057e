import { type Problem, problem } from '../../messages/problem.ts';
import type { Branch } from '../branch.ts';

/** Rule: every branch has an id of its own. */
export function duplicateIds(branches: readonly Branch[]): Problem[] {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const { id } of branches) {
    if (seen.has(id)) twice.add(id);
    seen.add(id);
  }
  return [...twice].map((id) => problem('circuit.duplicate-id', { kind: 'part', id }, { part: id }));
}
