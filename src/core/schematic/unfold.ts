import { type CircuitView, hasSpeaker } from './circuitView.ts';
import { orderBranches, orderWithin } from './orderBranches.ts';
import { inSeries, reverse, type SpLeaf, type SpTree, someLeaf } from './spTree.ts';

/** One step of a main path: something hangs across the two rails, or something is in series in either of them. */
export type Step = { readonly leg: SpTree } | { readonly block: SpTree | null; readonly below: SpTree | null };

export interface Unfolded {
  readonly steps: readonly Step[];
  /** The speaker; or pieces with speakers, side by side or one after another; or null where there is no speaker. */
  readonly end: SpLeaf | { readonly shape: 'parallel' | 'series'; readonly children: readonly SpTree[] } | null;
}

/** Follows a tree from its root towards its speakers and lists what stands on the way, up to the first fork. */
export function unfold(view: CircuitView, root: SpTree): Unfolded {
  const goal = hasSpeaker(view, root) ? null : deepestLeaf(root).leaf;
  const leadsOn = (tree: SpTree): boolean =>
    goal === null ? hasSpeaker(view, tree) : someLeaf(tree, (leaf) => leaf === goal);
  const steps: Step[] = [];
  let tree = root;
  while (tree.shape !== 'leaf') {
    const onward = tree.children.filter(leadsOn);
    if (tree.shape === 'parallel') {
      const legs = tree.children.filter((child) => !leadsOn(child)).map((leg) => orderWithin(view, leg, 'beside'));
      for (const leg of orderBranches(view, legs, 'beside')) steps.push({ leg });
      if (onward.length > 1) return { steps, end: { shape: 'parallel', children: onward } };
    } else {
      const first = tree.children.indexOf(onward[0]!);
      const last = tree.children.indexOf(onward.at(-1)!);
      const above = tree.children.slice(0, first).map((block) => orderWithin(view, block, 'above'));
      const below = tree.children.slice(last + 1).map((block) => orderWithin(view, reverse(block), 'above'));
      below.reverse();
      for (let k = 0; k < Math.max(above.length, below.length); k++) {
        steps.push({ block: above[k] ?? null, below: below[k] ?? null });
      }
      if (onward.length > 1)
        return { steps, end: { shape: 'series', children: chained(tree.children.slice(first, last + 1), leadsOn) } };
    }
    tree = onward[0]!;
  }
  if (goal !== null) steps.push({ leg: tree });
  return { steps, end: goal === null ? tree : null };
}

/** Parts between two speakers in series go to the lower one's row. */
function chained(children: readonly SpTree[], leadsOn: (tree: SpTree) => boolean): SpTree[] {
  const chain: SpTree[] = [];
  let before: SpTree | null = null;
  for (const child of children) {
    const whole: SpTree = before === null ? child : inSeries(before, child);
    if (leadsOn(child)) chain.push(whole);
    before = leadsOn(child) ? null : whole;
  }
  return chain;
}

function deepestLeaf(tree: SpTree): { leaf: SpLeaf; depth: number } {
  if (tree.shape === 'leaf') return { leaf: tree, depth: 0 };
  let best = deepestLeaf(tree.children[0]!);
  for (const child of tree.children.slice(1)) {
    const other = deepestLeaf(child);
    if (other.depth >= best.depth) best = other;
  }
  return { leaf: best.leaf, depth: best.depth + 1 };
}
