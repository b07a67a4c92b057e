import type { CircuitView } from './circuitView.ts';
import { nameWidth, partAcross, partLength, terminalValueWidth, textHeight, valueWidth } from './metrics.ts';
import type { PlacedPart, Point } from './plan.ts';

/** A wanted piece of wire. */
export interface Stroke {
  readonly node: string;
  readonly points: readonly Point[];
}

/** A drawing in the making: symbols are final, strokes are wishes that later ones may not touch. */
export interface Draft {
  readonly parts: PlacedPart[];
  /** For each placed part its index in the part list. */
  readonly edges: number[];
  readonly strokes: Stroke[];
}

/** Where new symbols go: the draft, and the number of the lane they stand in. */
export interface Pen {
  readonly view: CircuitView;
  readonly draft: Draft;
  readonly lane: number;
}

/** Adds a wire through the given coordinates. */
export function draw(draft: Draft, node: string, ...coordinates: readonly (readonly [number, number])[]): void {
  draft.strokes.push({ node, points: coordinates.map(([x, y]) => ({ x, y })) });
}

/** Sets a part down, its pin on node `from` at the left or at the top. */
export function setDown(
  pen: Pen,
  edge: number,
  from: string,
  centre: Point,
  orientation: PlacedPart['orientation'],
): void {
  const part = pen.view.parts[edge]!;
  const half = partLength / 2;
  const ends: [Point, Point] =
    orientation === 'horizontal'
      ? [
          { x: centre.x - half, y: centre.y },
          { x: centre.x + half, y: centre.y },
        ]
      : [
          { x: centre.x, y: centre.y - half },
          { x: centre.x, y: centre.y + half },
        ];
  const isTerminal = part.kind === 'speaker' || part.kind === 'amplifier';
  const width = isTerminal ? terminalValueWidth : valueWidth;
  const off = partAcross / 2 + (orientation === 'horizontal' || isTerminal ? textHeight / 2 : 0);
  pen.draft.edges.push(edge);
  pen.draft.parts.push({
    partId: part.id,
    kind: part.kind,
    centre,
    orientation,
    pins: part.nodes[0] === from ? ends : [ends[1], ends[0]],
    valueAnchor:
      orientation === 'horizontal'
        ? { x: centre.x, y: centre.y - off, align: 'middle', width }
        : { x: centre.x + off, y: centre.y - textHeight / 2, align: 'start', width },
    nameAnchor:
      orientation === 'horizontal'
        ? { x: centre.x, y: centre.y + off, align: 'middle', width: nameWidth }
        : { x: centre.x + off, y: centre.y + textHeight / 2, align: 'start', width: nameWidth },
    lane: pen.lane,
  });
}
