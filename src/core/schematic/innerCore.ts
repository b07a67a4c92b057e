import type { SpTree } from './spTree.ts';

export interface InnerCore {
  readonly edges: readonly SpTree[];
  /** The two nodes it hangs on, the one nearer to the first terminal first. */
  readonly ends: readonly [string, string];
}

/** A core of more nodes than this is taken as one. */
const nodeLimit = 24;

/**
 * Finds the smallest rigid piece of a core that hangs on only two of its nodes: it can be drawn on its own. Tries every
 * pair of nodes as separators. Null where the core is rigid throughout.
 */
export function innerCore(core: readonly SpTree[], terminals: readonly [string, string]): InnerCore | null {
  const nodes = nearestFirst(core, terminals[0]);
  if (nodes.length > nodeLimit) return null;
  let best: InnerCore | null = null;
  nodes.forEach((first, k) => {
    for (const second of nodes.slice(k + 1)) {
      for (const edges of piecesBetween(core, first, second, terminals)) {
        if (edges.length > 1 && edges.length < (best?.edges.length ?? core.length))
          best = { edges, ends: [first, second] };
      }
    }
  });
  return best;
}

function nearestFirst(core: readonly SpTree[], start: string): string[] {
  const nodes = [start];
  for (let at = 0; at < nodes.length; at++) {
    for (const { from, to } of core) {
      const far = from === nodes[at] ? to : to === nodes[at] ? from : null;
      if (far !== null && !nodes.includes(far)) nodes.push(far);
    }
  }
  return nodes;
}

/** Pieces that fall apart when two nodes are taken away, without those that hold another terminal. */
function piecesBetween(
  core: readonly SpTree[],
  first: string,
  second: string,
  terminals: readonly [string, string],
): SpTree[][] {
  const isWall = (node: string): boolean => node === first || node === second;
  const waiting = new Set(core.filter(({ from, to }) => !(isWall(from) && isWall(to))));
  const pieces: SpTree[][] = [];
  for (const seed of waiting) {
    const inside = new Set([seed.from, seed.to].filter((node) => !isWall(node)));
    const piece: SpTree[] = [];
    for (let size = -1; size !== piece.length; ) {
      size = piece.length;
      for (const edge of waiting) {
        if (!inside.has(edge.from) && !inside.has(edge.to)) continue;
        waiting.delete(edge);
        piece.push(edge);
        for (const node of [edge.from, edge.to]) if (!isWall(node)) inside.add(node);
      }
    }
    if (!terminals.some((node) => inside.has(node))) pieces.push(piece);
  }
  return pieces;
}
