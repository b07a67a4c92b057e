import type { CircuitView, Edge } from './circuitView.ts';
import { distancesFrom } from './distancesFrom.ts';

/**
 * Picks where a piece without an amplifier would be fed: for speakers the node drawn leftmost before, else the one that
 * parts most of them from each other and lies farthest from them; without speakers an open end. The choice only shapes
 * the drawing.
 */
export function chooseTerminals(view: CircuitView, edges: readonly number[]): { hot: string; ret: string } {
  const { edges: parts, returns, memory } = view;
  const nodes = [...new Set(edges.flatMap((index) => parts[index]!.nodes))];
  const known = nodes.find((node) => returns.has(node));
  const inner = nodes.filter((node) => !returns.has(node));
  const degreeOf = (node: string): number => edges.filter((index) => parts[index]!.nodes.includes(node)).length;
  const speakers = edges.filter((index) => parts[index]!.kind === 'speaker');

  let hot = inner.find((node) => degreeOf(node) === 1) ?? inner[0]!;
  if (speakers.length > 0) {
    const ends = speakers.flatMap((index) => parts[index]!.nodes.filter((node) => !returns.has(node)));
    const distances = distancesFrom(parts, edges, ends, returns);
    const toReturn = (node: string): number =>
      edges.filter((index) => parts[index]!.nodes.includes(node) && parts[index]!.nodes.some((end) => returns.has(end)))
        .length;
    const left = (node: string): number => memory.leftOf(node) ?? Infinity;
    const score = (node: string): readonly number[] => [
      -Math.min(left(node), Number.MAX_VALUE),
      parted(parts, edges, speakers, new Set([...returns, node])),
      speakers.length === 1 ? Number(degreeOf(node) !== 2) : 0,
      distances.get(node) ?? 0,
      -toReturn(node),
      degreeOf(node),
    ];
    hot = inner.reduce((best, node) => (isGreater(score(node), score(best)) ? node : best));
  }
  if (known !== undefined) return { hot, ret: known };
  const far = [...distancesFrom(parts, edges, [hot], returns)].reduce((best, entry) =>
    entry[1] > best[1] ? entry : best,
  );
  return { hot, ret: far[0] };
}

/** Into how many groups the speakers fall when nothing passes through `walls`. */
function parted(parts: readonly Edge[], edges: readonly number[], speakers: readonly number[], walls: Set<string>) {
  const seen = new Set<string>();
  let groups = 0;
  for (const index of speakers) {
    const ends = parts[index]!.nodes.filter((node) => !walls.has(node));
    if (ends.length > 0 && ends.some((node) => seen.has(node))) continue;
    groups += 1;
    for (const node of distancesFrom(parts, edges, ends, walls).keys()) if (!walls.has(node)) seen.add(node);
  }
  return groups;
}

function isGreater(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! > b[i]!;
  return false;
}
