import { type Problem, problem } from '../../messages/problem.ts';
import { type Branch, type GyratorBranch, RETURN } from '../branch.ts';
import { type Islands, islands } from '../islands.ts';
import { branchNodes, nodesOf } from '../nodesOf.ts';

/**
 * Rule: the potential of every node is determined. An island that admittances and sources tie to the return is. Others
 * may be tied by gyrators alone (a driver with one lead off takes the potential of its back-emf): a shift x of the
 * islands' potentials goes unnoticed when no admittance sees it (it is constant on every island, 0 on tied ones) and no
 * gyrator draws a current from it into any node, K x = 0. K has one row per node, one column per loose island; the
 * columns without a pivot are the islands that float. Each is named by its first node.
 */
export function floatingNodes(branches: readonly Branch[]): Problem[] {
  const ties = islands();
  const known = new Set([RETURN]);
  for (const branch of branches) {
    if (branch.kind === 'gyrator') continue;
    ties.join(branch.nodes[0], branch.nodes[1]);
    if (branch.kind === 'source' && branch.resistanceOhm === 0) known.add(branch.nodes[0]);
  }
  const ground = ties.of(RETURN);
  const firstNode = new Map<string, string>();
  for (const node of nodesOf(branches)) {
    const island = ties.of(node);
    if (island !== ground && !firstNode.has(island)) firstNode.set(island, node);
  }
  if (firstNode.size === 0) return [];
  const loose = [...firstNode.keys()];
  const gyrators = branches.filter((b) => b.kind === 'gyrator');
  return columnsWithoutPivot(gyratorRows(gyrators, known, ties, loose), loose.length).map((column) => {
    const node = firstNode.get(loose[column]!)!;
    const part = branches.find((b) => branchNodes(b).includes(node))!.id;
    return problem('circuit.floating-node', { kind: 'node', id: node }, { node, part });
  });
}

/** Currents that the gyrators send into each node, per volt on each loose island. */
function gyratorRows(
  gyrators: readonly GyratorBranch[],
  known: ReadonlySet<string>,
  ties: Islands,
  loose: readonly string[],
): number[][] {
  const columnOf = new Map(loose.map((island, column) => [island, column]));
  const rows = new Map<string, number[]>();
  const add = (row: string, node: string, value: number): void => {
    const column = columnOf.get(ties.of(node));
    if (column === undefined || known.has(row)) return;
    const entries = rows.get(row) ?? new Array<number>(loose.length).fill(0);
    entries[column]! += value;
    rows.set(row, entries);
  };
  for (const { primary, secondary, gyrationS } of gyrators) {
    for (const i of [0, 1] as const) {
      for (const j of [0, 1] as const) {
        const value = i === j ? gyrationS : -gyrationS;
        add(primary[i], secondary[j], value);
        add(secondary[i], primary[j], -value);
      }
    }
  }
  return [...rows.values()];
}

/** Gaussian elimination with row exchange; a column whose entries are all below 1e-9 of the largest has no pivot. */
function columnsWithoutPivot(rows: number[][], columns: number): number[] {
  const threshold = 1e-9 * Math.max(0, ...rows.flat().map(Math.abs));
  const free: number[] = [];
  let top = 0;
  for (let column = 0; column < columns; column++) {
    let best = top;
    for (let r = top; r < rows.length; r++) {
      if (Math.abs(rows[r]![column]!) > Math.abs(rows[best]![column]!)) best = r;
    }
    const pivot = rows[best];
    if (pivot === undefined || !(Math.abs(pivot[column]!) > threshold)) {
      free.push(column);
      continue;
    }
    rows[best] = rows[top]!;
    rows[top] = pivot;
    for (let r = top + 1; r < rows.length; r++) {
      const factor = rows[r]![column]! / pivot[column]!;
      for (let c = column; c < columns; c++) rows[r]![c]! -= factor * pivot[c]!;
    }
    top++;
  }
  return free;
}
