import { type CircuitView, partsIn } from './circuitView.ts';
import type { Composition } from './compose.ts';
import { type Draft, draw, setDown } from './draft.ts';
import type { Layout } from './layOut.ts';
import { horizontalReach, lead, partLength } from './metrics.ts';
import type { SchematicLane } from './plan.ts';

/**
 * The drawing that works for any network, if not for any eye: every node an upright line at the left, every speaker in
 * its lane, every other part in a row of its own below. All wires run level at heights of their own, so they can only
 * cross the lines squarely.
 */
export function tabulate(view: CircuitView, composition: Composition): Layout {
  const draft: Draft = { parts: [], edges: [], strokes: [] };
  const nodes = [...new Set(view.parts.flatMap((part) => part.nodes))];
  const trunkWidth = nodes.length + 2;
  const speakerX = trunkWidth + partLength;
  const heights = new Map<string, number[]>(nodes.map((node) => [node, []]));
  const lineTo = (node: string, x: number, y: number): void => {
    draw(draft, node, [x, y], [nodes.indexOf(node) + 1, y]);
    heights.get(node)!.push(y);
  };
  const lanes: SchematicLane[] = [];
  let y = 0;
  for (const edge of composition.lanes) {
    const part = view.parts[edge]!;
    const [hot, ret] = part.nodes;
    const [top, bottom] = [y + lead, y + partLength + 3 * lead];
    setDown({ view, draft, lane: lanes.length }, edge, hot, { x: speakerX, y: (top + bottom) / 2 }, 'vertical');
    draw(draft, hot, [speakerX, top], [speakerX, top + lead]);
    draw(draft, ret, [speakerX, bottom], [speakerX, bottom - lead]);
    lineTo(hot, speakerX, top);
    lineTo(ret, speakerX, bottom);
    lanes.push({ kind: 'way', partId: part.id, top: y, bottom: bottom + lead });
    y = bottom + lead;
  }
  const shared = { view, draft, lane: lanes.length };
  view.parts.forEach((part, edge) => {
    if (part.kind === 'speaker') return;
    const level = y + horizontalReach + 0.5;
    const under = level + horizontalReach + 0.5;
    const [left, right] = part.nodes;
    setDown(shared, edge, left, { x: speakerX, y: level }, 'horizontal');
    const far = speakerX + partLength / 2 + lead;
    lineTo(left, speakerX - partLength / 2, level);
    draw(draft, right, [far - lead, level], [far, level], [far, under]);
    lineTo(right, far, under);
    y = under;
  });
  for (const [node, ys] of heights) {
    const x = nodes.indexOf(node) + 1;
    draw(draft, node, [x, Math.min(...ys)], [x, Math.max(...ys)]);
  }
  lanes.push({ kind: 'shared', partId: null, top: 0, bottom: y + lead });
  const links = composition.outside.flatMap((tree) => partsIn(view, tree).map((part) => part.id));
  const openings = view.edges.slice(view.parts.length).map(({ nodes }) => nodes);
  return { draft, trunkWidth, speakerX, lanes, links, openings };
}
