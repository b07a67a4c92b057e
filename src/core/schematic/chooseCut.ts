import { type CircuitView, hasSpeaker, partsIn } from './circuitView.ts';
import { reduceSeriesParallel } from './reduceSeriesParallel.ts';
import { leavesOf, openEdge, reverse, type SpTree } from './spTree.ts';

/** A core of more edges than this is thinned by a rule of thumb instead of by trying every edge. */
const trialLimit = 14;

/**
 * Picks the edge of a rigid core that is best drawn as a link: one whose removal leaves least, that an edit has just
 * put in or that was a link before, that can stand as a bridge above one way's row, and without which the speakers are
 * no farther from their source.
 */
export function chooseCut(view: CircuitView, core: readonly SpTree[], terminals: readonly [string, string]): SpTree {
  const silent = core.filter((edge) => !hasSpeaker(view, edge));
  const candidates = silent.length > 0 ? silent : core;
  if (core.length > trialLimit) return lastOffTheTree(core, candidates, terminals);
  let best = candidates[0]!;
  let bestScore: readonly number[] | null = null;
  for (const candidate of candidates) {
    const score = scoreOf(view, core, candidate, terminals);
    if (bestScore === null || isLess(score, bestScore)) {
      best = candidate;
      bestScore = score;
    }
  }
  return best;
}

function scoreOf(
  view: CircuitView,
  core: readonly SpTree[],
  candidate: SpTree,
  terminals: readonly [string, string],
): readonly number[] {
  const rest = core.filter((edge) => edge !== candidate);
  const { edges, dangling } = reduceSeriesParallel(rest, terminals);
  const whole = edges.length === 1 ? edges[0]! : null;
  const fed = whole === null || whole.from === terminals[0] ? whole : reverse(whole);
  const feeds = fed === null ? [] : feedsIn(view, fed, [fed.from], 0);
  const isBridge = feeds.some(({ nodes }) => nodes.includes(candidate.from) && nodes.includes(candidate.to));
  const ids = partsIn(view, candidate).map((part) => part.id);
  const isKnown = ids.some((id) => view.memory.placeOf(id) !== undefined && !view.memory.wasLink(id));
  const edgesOfCandidate = leavesOf(candidate).map((leaf) => leaf.edge);
  return [
    edges.length + dangling.length,
    !view.memory.isEmpty && isKnown ? 1 : 0,
    isBridge ? 0 : 1,
    feeds.reduce((sum, feed) => sum + feed.distance, 0),
    edgesOfCandidate.includes(openEdge) ? 1 : 0,
    edgesOfCandidate.length,
    -Math.max(...edgesOfCandidate),
  ];
}

interface Feed {
  /** Nodes of the upper row from the source, or the last fork, to the speaker. */
  readonly nodes: readonly string[];
  /** Number of parts in series before the speaker. */
  readonly distance: number;
}

function feedsIn(view: CircuitView, tree: SpTree, nodes: readonly string[], distance: number): Feed[] {
  if (!hasSpeaker(view, tree)) return [];
  if (tree.shape === 'leaf') return [{ nodes, distance }];
  if (tree.shape === 'parallel') {
    const onward = tree.children.filter((child) => hasSpeaker(view, child));
    const row = onward.length > 1 ? [tree.from] : nodes;
    return onward.flatMap((child) => feedsIn(view, child, row, distance));
  }
  const feeds: Feed[] = [];
  let row = nodes;
  let passed = distance;
  for (const child of tree.children) {
    const inner = feedsIn(view, child, row, passed);
    feeds.push(...inner);
    passed += inner.length > 0 ? 0 : fewestParts(child);
    row = inner.length > 0 ? [child.to] : [...row, child.to];
  }
  return feeds;
}

function fewestParts(tree: SpTree): number {
  if (tree.shape === 'leaf') return 1;
  const counts = tree.children.map(fewestParts);
  return tree.shape === 'series' ? counts.reduce((a, b) => a + b, 0) : Math.min(...counts);
}

/** For a large core: the last edge that no shortest path from the source needs and that does not end on the return. */
function lastOffTheTree(core: readonly SpTree[], candidates: readonly SpTree[], [hot, ret]: readonly [string, string]) {
  const tree = new Set<SpTree>();
  const reached = [hot];
  for (let at = 0; at < reached.length; at++) {
    const node = reached[at]!;
    if (node === ret) continue;
    for (const edge of core) {
      const far = edge.from === node ? edge.to : edge.to === node ? edge.from : null;
      if (far === null || reached.includes(far)) continue;
      reached.push(far);
      tree.add(edge);
    }
  }
  const off = candidates.filter((edge) => !tree.has(edge));
  const inner = off.filter((edge) => edge.from !== ret && edge.to !== ret);
  return inner.at(-1) ?? off.at(-1) ?? candidates.at(-1)!;
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! < b[i]!;
  return false;
}
