import type { Part } from '../circuit/part.ts';
import { distancesFrom } from './distancesFrom.ts';
import type { Point, SchematicPlan } from './plan.ts';

/**
 * Pairs of nodes that a part joined in the previous drawing and that nothing joins now, the returns aside: their place is
 * kept free, so that what stood on either side stays where it was.
 */
export function openingsOf(
  parts: readonly Part[],
  previous: SchematicPlan | undefined,
  returns: ReadonlySet<string>,
): (readonly [string, string])[] {
  if (previous === undefined) return [];
  const ids = new Set(parts.map((part) => part.id));
  const nodeAt = new Map(previous.wires.flatMap(({ node, points }) => points.map((point) => [keyOf(point), node])));
  const gone = previous.parts
    .filter(({ partId, kind }) => !ids.has(partId) && kind !== 'amplifier' && kind !== 'speaker')
    .map(({ pins }) => pins.map((pin) => nodeAt.get(keyOf(pin))));
  const edges = parts.map((_, index) => index).filter((index) => parts[index]!.kind !== 'amplifier');
  const uses = new Map<string, number>();
  for (const node of parts.flatMap((part) => part.nodes)) uses.set(node, (uses.get(node) ?? 0) + 1);
  const walls = withJumpers(parts, returns);
  const kept: (readonly [string, string])[] = [];
  for (const [a, b] of [...previous.openings, ...gone]) {
    if (a === undefined || b === undefined || a === b) continue;
    if (!uses.has(a) || !uses.has(b) || walls.has(a) || walls.has(b)) continue;
    const already = kept.some((pair) => pair.includes(a) && pair.includes(b));
    const isLoose = uses.get(a) === 1 || uses.get(b) === 1;
    if (!already && (isLoose || !distancesFrom(parts, edges, [a], walls).has(b))) kept.push([a, b]);
  }
  return kept;
}

/** The returns and what jumpers tie to them. */
function withJumpers(parts: readonly Part[], returns: ReadonlySet<string>): ReadonlySet<string> {
  const jumpers = parts.map((_, index) => index).filter((index) => parts[index]!.kind === 'jumper');
  return new Set(distancesFrom(parts, jumpers, [...returns], new Set()).keys());
}

const keyOf = ({ x, y }: Point): string => `${x} ${y}`;
