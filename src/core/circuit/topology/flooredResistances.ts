import { type Problem, problem } from '../../messages/problem.ts';
import type { Branch } from '../branch.ts';
import { LEAST_OHM } from '../branches/leastOhm.ts';

/** Remark: a resistance below the least that the solver takes was raised to it. */
export function flooredResistances(branches: readonly Branch[]): Problem[] {
  return branches.flatMap((branch) =>
    branch.kind === 'admittance' && branch.short === 'floored'
      ? [problem('circuit.resistance-floored', { kind: 'part', id: branch.id }, { part: branch.id, ohm: LEAST_OHM })]
      : [],
  );
}
