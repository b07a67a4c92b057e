import { type Problem, problem } from '../../messages/problem.ts';
import type { Branch } from '../branch.ts';

interface Step {
  readonly from: string;
  readonly by: string;
}

/**
 * Rule: no chain of links and near-zero resistances joins the two terminals of a source. The shortest such chain is named,
 * part by part: links that only hang on it are no fault.
 */
export function shortedSources(branches: readonly Branch[]): Problem[] {
  return branches.flatMap((branch) => {
    if (branch.kind !== 'source') return [];
    const [plus, minus] = branch.nodes;
    const chain = plus === minus ? null : shortestChain(branches, plus, minus);
    if (chain === null) return [];
    const values = { source: branch.id, node: plus, by: chain.join(', ') };
    return [problem('circuit.source-shorted', { kind: 'part', id: branch.id }, values)];
  });
}

/** Ids of the fewest shorts that lead from one node to another, in order; null where none do. */
function shortestChain(branches: readonly Branch[], plus: string, minus: string): string[] | null {
  const reached = new Map<string, Step | null>([[plus, null]]);
  // A Map is walked in the order of its entries, those added on the way included: breadth first.
  for (const node of reached.keys()) {
    if (node === minus) break;
    for (const branch of branches) {
      if (branch.kind !== 'admittance' || branch.short === undefined) continue;
      const [a, b] = branch.nodes;
      const next = a === node ? b : b === node ? a : null;
      if (next !== null && !reached.has(next)) reached.set(next, { from: node, by: branch.id });
    }
  }
  if (!reached.has(minus)) return null;
  const chain: string[] = [];
  for (let step = reached.get(minus); step != null; step = reached.get(step.from)) chain.unshift(step.by);
  return chain;
}
