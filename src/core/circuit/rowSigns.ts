import { type Branch, RETURN } from './branch.ts';
import { islands } from './islands.ts';
import { branchNodes } from './nodesOf.ts';

/**
 * A sign for each row that makes the nodal matrix symmetric, or null where none does. Admittances are symmetric, a
 * gyrator is antisymmetric; where gyrators always lead from one side to another (electrical to acoustical), turning the
 * signs of the other side's equations makes everything symmetric, and half of the elimination is saved. Sides are
 * what hangs together without the return; a gyrator joins the nodes of each of its pairs and parts the pairs.
 */
export function rowSigns(
  branches: readonly Branch[],
  rowOf: ReadonlyMap<string, number>,
  rows: number,
): Float64Array | null {
  const sides = islands();
  const opposite = new Map<string, string[]>();
  for (const branch of branches) {
    const pairs = branch.kind === 'gyrator' ? [branch.primary, branch.secondary] : [branch.nodes];
    for (const [a, b] of pairs) if (a !== RETURN && b !== RETURN) sides.join(a, b);
  }
  for (const branch of branches) {
    if (branch.kind !== 'gyrator') continue;
    const a = branch.primary.find((node) => node !== RETURN);
    const b = branch.secondary.find((node) => node !== RETURN);
    if (a === undefined || b === undefined) continue;
    for (const [from, to] of [
      [sides.of(a), sides.of(b)],
      [sides.of(b), sides.of(a)],
    ] as const) {
      opposite.set(from, [...(opposite.get(from) ?? []), to]);
    }
  }
  const signOf = alternateSigns(opposite);
  if (signOf === null) return null;
  const signs = new Float64Array(rows).fill(1);
  for (const node of branches.flatMap(branchNodes)) {
    if (node !== RETURN) signs[rowOf.get(node)!] = signOf.get(sides.of(node)) ?? 1;
  }
  return signs;
}

/** Gives neighbours opposite signs, or null where a round trip would come back with the other sign. */
function alternateSigns(neighbours: ReadonlyMap<string, readonly string[]>): Map<string, number> | null {
  const signOf = new Map<string, number>();
  for (const start of neighbours.keys()) {
    if (signOf.has(start)) continue;
    signOf.set(start, 1);
    const waiting = [start];
    for (let side = waiting.pop(); side !== undefined; side = waiting.pop()) {
      const sign = signOf.get(side)!;
      for (const other of neighbours.get(side)!) {
        const found = signOf.get(other);
        if (found === sign) return null;
        if (found !== undefined) continue;
        signOf.set(other, -sign);
        waiting.push(other);
      }
    }
  }
  return signOf;
}
