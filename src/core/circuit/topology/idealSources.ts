import { type Problem, problem } from '../../messages/problem.ts';
import { type Branch, RETURN } from '../branch.ts';

/** Rule: a source without resistance stands between a node of its own and the return; no two of them set one node. */
export function idealSources(branches: readonly Branch[]): Problem[] {
  const problems: Problem[] = [];
  const drivenBy = new Map<string, string>();
  for (const branch of branches) {
    if (branch.kind !== 'source') continue;
    const place = { kind: 'part', id: branch.id } as const;
    const [plus, minus] = branch.nodes;
    if (plus === minus) {
      problems.push(problem('circuit.source-shorted', place, { source: branch.id, node: plus, by: branch.id }));
      continue;
    }
    if (branch.resistanceOhm > 0) continue;
    if (minus !== RETURN) {
      problems.push(problem('circuit.source-off-return', place, { source: branch.id, node: minus }));
      continue;
    }
    const other = drivenBy.get(plus);
    if (other !== undefined) {
      problems.push(problem('circuit.source-loop', place, { source: branch.id, other, node: plus }));
    }
    drivenBy.set(plus, branch.id);
  }
  return problems;
}
