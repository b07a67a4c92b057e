/** A two-terminal piece of a network made of series and parallel joins of single edges. */
export type SpTree = SpLeaf | SpJoin;

interface SpEnds {
  readonly from: string;
  readonly to: string;
}
/** `edge` is the index in the caller's list, or `openEdge` for a place where nothing is connected. */
export type SpLeaf = SpEnds & { readonly shape: 'leaf'; readonly edge: number };
/** Children of a series run from `from` to `to`; those of a parallel all join the two. Neither nests in its own kind. */
export type SpJoin = SpEnds & { readonly shape: 'series' | 'parallel'; readonly children: readonly SpTree[] };

export const openEdge = -1;

const flat = (shape: SpJoin['shape'], tree: SpTree): readonly SpTree[] =>
  tree.shape === shape ? tree.children : [tree];

/** The same piece seen from its other end. */
export function reverse(tree: SpTree): SpTree {
  if (tree.shape === 'leaf') return { ...tree, from: tree.to, to: tree.from };
  const children = tree.children.map(reverse);
  return {
    shape: tree.shape,
    from: tree.to,
    to: tree.from,
    children: tree.shape === 'series' ? children.reverse() : children,
  };
}

/** Joins two pieces end to end: the first one's `to` is the second one's `from`. */
export function inSeries(first: SpTree, second: SpTree): SpTree {
  if (first.to !== second.from) throw new RangeError(`no common node: ${first.to}, ${second.from}`);
  return {
    shape: 'series',
    from: first.from,
    to: second.to,
    children: [...flat('series', first), ...flat('series', second)],
  };
}

/** Joins two pieces side by side; the second is turned round where it runs the other way. */
export function inParallel(first: SpTree, second: SpTree): SpTree {
  const other = first.from === second.from ? second : reverse(second);
  return {
    shape: 'parallel',
    from: first.from,
    to: first.to,
    children: [...flat('parallel', first), ...flat('parallel', other)],
  };
}

/** Every leaf, from `from` to `to`, branches in their order. */
export function leavesOf(tree: SpTree): SpLeaf[] {
  const leaves: SpLeaf[] = [];
  const walk = (piece: SpTree): void => {
    if (piece.shape === 'leaf') leaves.push(piece);
    else for (const child of piece.children) walk(child);
  };
  walk(tree);
  return leaves;
}

/** Whether any leaf passes a test. */
export const someLeaf = (tree: SpTree, test: (leaf: SpLeaf) => boolean): boolean =>
  tree.shape === 'leaf' ? test(tree) : tree.children.some((child) => someLeaf(child, test));
