import { chooseCut } from './chooseCut.ts';
import type { CircuitView } from './circuitView.ts';
import { distancesFrom } from './distancesFrom.ts';
import { innerCore } from './innerCore.ts';
import { reduceSeriesParallel } from './reduceSeriesParallel.ts';
import { openEdge, reverse, type SpLeaf, type SpTree } from './spTree.ts';

export interface Decomposition {
  /** Everything between the terminals that series and parallel joins can say; null when nothing is left. */
  readonly tree: SpTree | null;
  /** What had to be taken out to get there: drawn as links across. */
  readonly links: readonly SpTree[];
}

/**
 * Makes a piece of network series-parallel between its terminals: loose ends get an open place towards the return, and
 * one bridging piece after another is taken out until nothing rigid is left.
 */
export function decompose(
  view: CircuitView,
  edges: readonly SpTree[],
  terminals: readonly [string, string],
): Decomposition {
  const links: SpTree[] = [];
  let pending = edges;
  for (;;) {
    const { edges: left, dangling } = reduceSeriesParallel(pending, terminals);
    if (dangling.length > 0) {
      pending = [...pending, openEnd(pending, left.length, dangling, terminals)];
    } else if (left.length > 1) {
      const inner = innerCore(left, terminals);
      if (inner !== null) {
        const part = decompose(view, inner.edges, inner.ends);
        links.push(...part.links);
        pending = [...left.filter((edge) => !inner.edges.includes(edge)), ...(part.tree === null ? [] : [part.tree])];
        continue;
      }
      const cut = chooseCut(view, left, terminals);
      links.push(cut);
      pending = left.filter((edge) => edge !== cut);
    } else {
      return { tree: left[0] === undefined ? null : oriented(left[0], terminals[0]), links };
    }
  }
}

/** Nodes near the return that are tried as the far side of an open place. */
const triedTargets = 6;

/**
 * An open place from a loose end to the return, or to a node near it if only that leaves the rest as series-parallel as
 * it was: a way may have a return of its own.
 */
function openEnd(
  edges: readonly SpTree[],
  coreSize: number,
  dangling: readonly SpTree[],
  terminals: readonly [string, string],
): SpLeaf {
  const piece =
    dangling.find((one) => !dangling.some((other) => other !== one && other.from === one.to)) ?? dangling[0]!;
  const [hot, ret] = piece.from === terminals[1] ? [terminals[1], terminals[0]] : terminals;
  const openTo = (to: string): SpLeaf => ({ shape: 'leaf', edge: openEdge, from: piece.to, to });
  const pairs = edges.map(({ from, to }) => ({ nodes: [from, to] as const }));
  const near = distancesFrom(
    pairs,
    pairs.map((_, index) => index),
    [ret],
    new Set([hot]),
  );
  const targets = [...near.keys()].filter((node) => node !== piece.to && node !== piece.from).slice(0, triedTargets);
  const kept = targets.find((to) => reduceSeriesParallel([...edges, openTo(to)], terminals).edges.length <= coreSize);
  return openTo(kept ?? ret);
}

const oriented = (tree: SpTree, hot: string): SpTree => (tree.from === hot ? tree : reverse(tree));
