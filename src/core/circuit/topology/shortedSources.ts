import { type Problem, problem } from '../../messages/problem.ts';
import type { Branch } from '../branch.ts';
import { islands } from '../islands.ts';

/** Rule: no chain of links and near-zero resistances joins the two terminals of a source. */
export function shortedSources(branches: readonly Branch[]): Problem[] {
  const wires = islands();
  for (const branch of branches) {
    if (branch.kind === 'admittance' && branch.short !== undefined) wires.join(branch.nodes[0], branch.nodes[1]);
  }
  const problems: Problem[] = [];
  for (const branch of branches) {
    if (branch.kind !== 'source') continue;
    const [plus, minus] = branch.nodes;
    if (plus === minus || wires.of(plus) !== wires.of(minus)) continue;
    const wire = branches.find(
      (b) => b.kind === 'admittance' && b.short !== undefined && wires.of(b.nodes[0]) === wires.of(plus),
    );
    problems.push(
      problem(
        'circuit.source-shorted',
        { kind: 'part', id: branch.id },
        { source: branch.id, node: plus, by: wire?.id ?? branch.id },
      ),
    );
  }
  return problems;
}
