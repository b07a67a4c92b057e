import { inParallel, inSeries, leavesOf, reverse, type SpLeaf, type SpTree } from './spTree.ts';

export interface SeriesParallelReduction {
  /** What is left, each edge with the tree of what it swallowed: one edge when the network is series-parallel. */
  readonly edges: readonly SpTree[];
  readonly seriesSteps: number;
  readonly parallelSteps: number;
  /** Pieces that hang on one node only, `from` that node; closed loops on one node among them. */
  readonly dangling: readonly SpTree[];
}

/**
 * Reduces a network between two terminals: merges parallel edges, splices inner nodes of degree two, takes off what
 * dangles. What is left is the same whatever the order (Duffin, Topology of series-parallel networks, J. Math. Anal.
 * Appl. 10 (1965) 303; Valdes, Tarjan & Lawler, SIAM J. Comput. 11 (1982) 298).
 *
 * @param edges pairs of node names, or trees from an earlier reduction
 * @param terminals two different nodes that are never spliced
 * @example reduceSeriesParallel([['in', 'a'], ['a', '0']], ['in', '0']).edges.length // 1
 */
export function reduceSeriesParallel(
  edges: readonly (readonly [string, string] | SpTree)[],
  terminals: readonly [string, string],
): SeriesParallelReduction {
  const live = new Map<number, SpTree>();
  const at = new Map<string, Set<number>>();
  const dangling: SpTree[] = [];
  const changed = { ends: [] as string[], inner: [] as string[] };
  let seriesSteps = 0;
  let parallelSteps = 0;
  let fresh = 0;

  const edgesAt = (node: string): Set<number> => {
    const known = at.get(node);
    if (known) return known;
    const made = new Set<number>();
    at.set(node, made);
    return made;
  };
  const touch = (tree: SpTree): void => {
    changed.ends.push(tree.from, tree.to);
    changed.inner.push(tree.from, tree.to);
  };
  const remove = (id: number): SpTree => {
    const tree = live.get(id)!;
    live.delete(id);
    edgesAt(tree.from).delete(id);
    edgesAt(tree.to).delete(id);
    touch(tree);
    return tree;
  };
  const twinOf = (tree: SpTree): number | undefined => {
    for (const id of edgesAt(tree.from)) {
      const other = live.get(id)!;
      if (tree.to === (other.from === tree.from ? other.to : other.from)) return id;
    }
    return undefined;
  };
  const add = (tree: SpTree): void => {
    if (tree.from === tree.to) {
      dangling.push(tree);
      return;
    }
    const twin = twinOf(tree);
    if (twin !== undefined) {
      parallelSteps += 1;
      add(inParallel(remove(twin), tree));
      return;
    }
    const id = fresh++;
    live.set(id, tree);
    edgesAt(tree.from).add(id);
    edgesAt(tree.to).add(id);
    touch(tree);
  };

  edges.forEach((edge, index) => {
    add('shape' in edge ? edge : ({ shape: 'leaf', edge: index, from: edge[0], to: edge[1] } satisfies SpLeaf));
  });
  // Loose ends first, so that the number of series steps does not depend on the order of the edges.
  const take = (queue: string[], degree: number): string | undefined => {
    for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
      if (!terminals.includes(node) && edgesAt(node).size === degree) return node;
    }
    return undefined;
  };
  for (;;) {
    const end = take(changed.ends, 1);
    if (end !== undefined) {
      const tree = remove([...edgesAt(end)][0]!);
      dangling.push(tree.to === end ? tree : reverse(tree));
      continue;
    }
    const inner = take(changed.inner, 2);
    if (inner === undefined) break;
    const [a, b] = [...edgesAt(inner)].map(remove) as [SpTree, SpTree];
    seriesSteps += 1;
    add(inSeries(a.to === inner ? a : reverse(a), b.from === inner ? b : reverse(b)));
  }
  const edgesLeft = [...live.values()]
    .map((tree) => ({ tree, first: firstEdge(tree) }))
    .sort((a, b) => a.first - b.first);
  return { edges: edgesLeft.map(({ tree }) => tree), seriesSteps, parallelSteps, dangling };
}

const firstEdge = (tree: SpTree): number => Math.min(...leavesOf(tree).map((leaf) => leaf.edge));
