import { type Problem, problem } from '../../messages/problem.ts';
import type { Branch } from '../branch.ts';

/** Remark: a branch with both ends on one node is allowed, but carries no current. */
export function oneNodeBranches(branches: readonly Branch[]): Problem[] {
  return branches.flatMap((branch) =>
    branch.kind === 'admittance' && branch.nodes[0] === branch.nodes[1]
      ? [
          problem(
            'circuit.both-ends-on-one-node',
            { kind: 'part', id: branch.id },
            { part: branch.id, node: branch.nodes[0] },
          ),
        ]
      : [],
  );
}
