import type { PartKind } from '../circuit/part.ts';
import { type CircuitView, partsIn } from './circuitView.ts';
import { leavesOf, type SpTree } from './spTree.ts';

/** Left to right below a rail; upwards from the row, the first one in it. */
const ranks: Record<'beside' | 'above', Partial<Record<PartKind, number>>> = {
  beside: { capacitor: 0, inductor: 1, resistor: 2 },
  above: { inductor: 0, resistor: 1, capacitor: 2 },
};

/** Puts the branches of one parallel join into drawing order; branches that were drawn before keep theirs. */
export function orderBranches(view: CircuitView, branches: readonly SpTree[], direction: 'beside' | 'above'): SpTree[] {
  const keyed = branches
    .map((tree) => ({ tree, key: keyOf(view, tree, direction), place: placeOf(view, tree, direction) }))
    .sort((a, b) => a.key[0] - b.key[0] || a.key[1] - b.key[1]);
  const known = keyed.filter((branch) => branch.place !== null).sort((a, b) => a.place! - b.place!);
  return keyed.map((branch) => (branch.place === null ? branch : known.shift()!).tree);
}

/** The same at every parallel join within a piece. */
export function orderWithin(view: CircuitView, tree: SpTree, direction: 'beside' | 'above'): SpTree {
  if (tree.shape === 'leaf') return tree;
  const children = tree.children.map((child) => orderWithin(view, child, direction));
  return { ...tree, children: tree.shape === 'series' ? children : orderBranches(view, children, direction) };
}

function keyOf(view: CircuitView, tree: SpTree, direction: 'beside' | 'above'): [number, number] {
  const first = Math.min(...leavesOf(tree).map((leaf) => leaf.edge));
  if (tree.shape !== 'leaf') return [3 + leavesOf(tree).length, first];
  const kind = view.parts[tree.edge]?.kind;
  return [(kind && ranks[direction][kind]) ?? 3, first];
}

function placeOf(view: CircuitView, tree: SpTree, direction: 'beside' | 'above'): number | null {
  const places = partsIn(view, tree).flatMap((part) => view.memory.placeOf(part.id) ?? []);
  if (places.length === 0) return null;
  return direction === 'beside' ? Math.min(...places.map(({ x }) => x)) : -Math.max(...places.map(({ y }) => y));
}
