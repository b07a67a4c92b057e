import { fail, type Result, succeed } from '../messages/problem.ts';
import { type Branch, RETURN } from './branch.ts';
import type { CompiledCircuit } from './compiledCircuit.ts';
import { eliminationOrder } from './eliminationOrder.ts';
import { eliminationProgram, pairSlots } from './eliminationProgram.ts';
import { branchNodes, nodesOf } from './nodesOf.ts';
import { rowSigns } from './rowSigns.ts';
import { EXCITATION_LENGTH, stampProgram } from './stampProgram.ts';
import { TOPOLOGY_REMARKS, TOPOLOGY_RULES } from './topology/index.ts';

/**
 * Checks a circuit's topology and works out how its nodal equations are filled and eliminated; values do not matter.
 * Returns every Problem of the topology: `circuit.duplicate-id`, `circuit.source-off-return`, `circuit.source-loop`,
 * `circuit.source-shorted`, `circuit.floating-node`. `previous` is reused where only values have changed.
 * @example compileCircuit([source('V1', ['a', '0'], 1, 0), resistor('R1', ['a', '0'], 8)])
 */
export function compileCircuit(branches: readonly Branch[], previous?: CompiledCircuit): Result<CompiledCircuit> {
  if (previous !== undefined && sameTopology(branches, previous.branches)) {
    return succeed({ ...previous, branches });
  }
  const problems = TOPOLOGY_RULES.flatMap((rule) => rule(branches));
  if (problems.length > 0) return fail(...problems);

  const sourceOfKnown = new Map<string, number>();
  branches.forEach((branch, index) => {
    if (branch.kind === 'source' && branch.resistanceOhm === 0) sourceOfKnown.set(branch.nodes[0], index);
  });
  const unknown = nodesOf(branches).filter((node) => !sourceOfKnown.has(node));
  const { order, later } = eliminationOrder(...pattern(branches, unknown, sourceOfKnown));
  const nodes = [...Array.from(order, (i) => unknown[i]!), ...sourceOfKnown.keys()];
  const rowOf = new Map(nodes.map((node, row) => [node, row]));
  rowOf.set(RETURN, nodes.length);

  const unknownCount = unknown.length;
  const balanced = rowSigns(branches, rowOf, nodes.length);
  const symmetric = balanced !== null;
  const signs = balanced ?? new Float64Array(nodes.length).fill(1);
  const knownBy = Int32Array.from(sourceOfKnown.values());
  const slots = pairSlots(later);
  const stamps = stampProgram(branches, { rowOf, unknownCount, knownBy, signs, symmetric }, slots);
  const excitedRows = new Set(stamps.excitations.filter((_, i) => i % EXCITATION_LENGTH === 0));
  const elimination = eliminationProgram({ later, slots, symmetric, excitedRows, entries: stamps.entries });
  return succeed({
    branches,
    indexOf: new Map(branches.map(({ id }, index) => [id, index])),
    rowOf,
    nodes,
    unknownCount,
    knownBy,
    signs,
    symmetric,
    elimination,
    stamps,
    remarks: TOPOLOGY_REMARKS.flatMap((remark) => remark(branches)),
  });
}

/** Which unknown potentials appear in whose equation, and which a source drives. */
function pattern(
  branches: readonly Branch[],
  unknown: readonly string[],
  known: ReadonlyMap<string, number>,
): [Set<number>[], Set<number>] {
  const indexOf = new Map(unknown.map((node, index) => [node, index]));
  const neighbours = unknown.map(() => new Set<number>());
  const couple = (from: readonly string[], to: readonly string[]): void => {
    for (const a of from) {
      for (const b of to) {
        const i = indexOf.get(a);
        const j = indexOf.get(b);
        if (i === undefined || j === undefined || i === j) continue;
        neighbours[i]!.add(j);
        neighbours[j]!.add(i);
      }
    }
  };
  const driven = new Set<number>();
  for (const branch of branches) {
    const nodes = branchNodes(branch);
    if (branch.kind === 'gyrator') couple(branch.primary, branch.secondary);
    else couple(nodes, nodes);
    if (branch.kind !== 'source' && !nodes.some((node) => known.has(node))) continue;
    for (const node of nodes) if (indexOf.has(node)) driven.add(indexOf.get(node)!);
  }
  return [neighbours, driven];
}

function sameTopology(branches: readonly Branch[], others: readonly Branch[]): boolean {
  if (branches.length !== others.length) return false;
  return branches.every((branch, index) => {
    const other = others[index]!;
    if (branch === other) return true;
    if (branch.id !== other.id || branch.kind !== other.kind) return false;
    if (branch.kind === 'admittance' && other.kind === 'admittance' && branch.short !== other.short) return false;
    if (branch.kind === 'source' && other.kind === 'source') {
      if ((branch.resistanceOhm === 0) !== (other.resistanceOhm === 0)) return false;
    }
    const nodes = branchNodes(other);
    return branchNodes(branch).every((node, i) => node === nodes[i]);
  });
}
