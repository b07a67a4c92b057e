import { chooseTerminals } from './chooseTerminals.ts';
import type { CircuitView, Edge } from './circuitView.ts';
import { distancesFrom } from './distancesFrom.ts';

/** What one amplifier feeds, or a piece of network that no amplifier reaches. */
export interface System {
  readonly hot: string;
  readonly ret: string;
  /** Index of the part that feeds it; indices are those of the view's edges. */
  readonly amplifier: number | null;
  /** Indices of the others. */
  readonly edges: readonly number[];
}

export interface Partition {
  readonly systems: readonly System[];
  /** Parts between two amplifiers' networks or between two returns. */
  readonly links: readonly number[];
  /** Parts with both ends on one node, speakers excepted. */
  readonly shorted: readonly number[];
}

/** Splits a circuit at its return into one system per amplifier and one per piece that no amplifier reaches. */
export function splitSystems(view: CircuitView): Partition {
  const { edges: parts, returns } = view;
  const systems: System[] = [];
  const links: number[] = [];
  const shorted: number[] = [];
  const whole: number[] = [];
  parts.forEach((part, index) => {
    const [a, b] = part.nodes;
    if (a !== b) whole.push(index);
    else if (part.kind === 'speaker') systems.push({ hot: a, ret: b, amplifier: null, edges: [index] });
    else shorted.push(index);
  });
  const feedOf = (index: number): { hot: string; ret: string } => {
    const [plus, minus] = parts[index]!.nodes;
    return returns.has(plus) && !returns.has(minus) ? { hot: minus, ret: plus } : { hot: plus, ret: minus };
  };

  for (const edges of pieces(parts, whole, returns, links)) {
    const feeds = new Map<string, number>();
    for (const index of edges) {
      const { hot } = feedOf(index);
      if (parts[index]!.kind === 'amplifier' && !feeds.has(hot)) feeds.set(hot, index);
    }
    if (feeds.size === 0) {
      systems.push({ ...chooseTerminals(view, edges), amplifier: null, edges });
      continue;
    }
    const regions = nearestFeeds(parts, edges, [...feeds.keys()], returns);
    const byFeed = new Map([...feeds.keys()].map((hot) => [hot, [] as number[]]));
    const sources = new Set(feeds.values());
    for (const index of edges) {
      if (sources.has(index)) continue;
      const part = parts[index]!;
      const [a, b] = part.nodes.map((node) => (returns.has(node) ? null : regions.get(node)!)) as [
        string | null,
        string | null,
      ];
      if (a !== null && b !== null && a !== b) {
        if (part.kind === 'speaker')
          systems.push({ hot: part.nodes[0], ret: part.nodes[1], amplifier: null, edges: [index] });
        else if (part.kind !== 'opening') links.push(index);
      } else byFeed.get((a ?? b)!)!.push(index);
    }
    for (const [hot, amplifier] of feeds) {
      systems.push({ hot, ret: feedOf(amplifier).ret, amplifier, edges: byFeed.get(hot)! });
    }
  }
  return { systems, links, shorted };
}

/** Groups parts that hang together without the returns; parts from return to return go to `links`. */
function pieces(parts: readonly Edge[], whole: readonly number[], returns: ReadonlySet<string>, links: number[]) {
  const parent = new Map<string, string>();
  const rootOf = (node: string): string => {
    let root = node;
    for (let up = parent.get(root); up !== undefined; up = parent.get(root)) root = up;
    return root;
  };
  const inner = (index: number): string[] => parts[index]!.nodes.filter((node) => !returns.has(node));
  for (const index of whole) {
    const [a, b] = inner(index).map(rootOf);
    if (a !== undefined && b !== undefined && a !== b) parent.set(b, a);
  }
  const groups = new Map<string, number[]>();
  for (const index of whole) {
    const [node] = inner(index);
    if (node === undefined) {
      links.push(index);
      continue;
    }
    const group = groups.get(rootOf(node));
    if (group) group.push(index);
    else groups.set(rootOf(node), [index]);
  }
  return [...groups.values()];
}

/** For every node the amplifier output that fewest parts lie between. */
function nearestFeeds(
  parts: readonly Edge[],
  edges: readonly number[],
  hots: readonly string[],
  returns: ReadonlySet<string>,
): Map<string, string> {
  const passive = edges.filter((index) => parts[index]!.kind !== 'amplifier');
  const byFeed = hots.map((hot) => ({ hot, distances: distancesFrom(parts, passive, [hot], returns) }));
  const nearest = new Map<string, string>();
  for (const node of new Set(edges.flatMap((index) => parts[index]!.nodes))) {
    let best = byFeed[0]!;
    for (const feed of byFeed) {
      if ((feed.distances.get(node) ?? Infinity) < (best.distances.get(node) ?? Infinity)) best = feed;
    }
    nearest.set(node, best.hot);
  }
  return nearest;
}
