import { type Draft, draw, type Pen } from './draft.ts';
import { drawRow } from './drawRow.ts';
import { type Frame, hasReturnParts, hotOf, innerHotOf, innerReturnOf, isWay, returnOf } from './frame.ts';

/** Where a frame's outer return can be taken up. */
interface ReturnEnd {
  readonly x: number;
  readonly y: number;
  /** Lanes whose outermost return rail carries it to the right edge; none where it can be had at the left only. */
  readonly taps: readonly Tap[];
}

/** A rail's right end: a node that the bus at the right edge may join to others. */
export interface Tap {
  readonly node: string;
  readonly x: number;
  readonly y: number;
}

/** Taps that belong together, by node. */
export type Buses = Map<string, Tap[]>;

/** Draws a frame with all it feeds, collects in `buses` what is to be joined at the right edge. */
export function drawFrames(penFor: (frame: Frame) => Pen, frame: Frame, buses: Buses): ReturnEnd {
  const { row, speaker, split } = frame.stage;
  const pen = penFor(frame);
  const { draft } = pen;
  const spans = drawRow(pen, row, { ...frame, bridgeLifts: frame.size.bridgeLifts }, speaker);
  const [outerY] = frame.railYs as [number];
  const [start, end] = spans[0] ?? [frame.xs[0]!, frame.xs.at(-1)!];
  if (isWay(frame) || frame.children.length === 0) {
    return { x: start, y: outerY, taps: [{ node: returnOf(frame), x: end, y: outerY }] };
  }

  const ends = frame.children.map((child) => drawFrames(penFor, child, buses));
  const fed = split === 'parallel' ? frame.children : frame.children.slice(0, 1);
  const fan = [frame.hotY, ...fed.map((child) => child.hotY)];
  draw(draft, innerHotOf(frame), [frame.xs.at(-1)!, frame.hotY], [frame.busX, frame.hotY]);
  draw(draft, innerHotOf(frame), [frame.busX, Math.min(...fan)], [frame.busX, Math.max(...fan)]);
  for (const child of fed) draw(draft, hotOf(child), [frame.busX, child.hotY], [child.xs[0]!, child.hotY]);
  if (split === 'series') joinInSeries(draft, frame, ends, buses);

  const joined = split === 'parallel' ? ends : ends.slice(-1);
  const main = joinReturns(draft, frame, joined, buses);
  if (hasReturnParts(frame)) {
    const inner = spans.at(-1);
    if (inner) draw(draft, innerReturnOf(frame), [inner[0], frame.railYs.at(-1)!], [main.x, main.y]);
    const x = frame.xs[0]! - 1;
    draw(draft, returnOf(frame), [x, outerY], [start, outerY]);
    return { x, y: outerY, taps: [] };
  }
  if (spans[0]) draw(draft, returnOf(frame), [start, outerY], [start, main.y], [main.x, main.y]);
  return main;
}

/** The lowest return that reaches the right edge takes up the others: there by the bus, at the left by a wire of their own. */
function joinReturns(draft: Draft, frame: Frame, ends: readonly ReturnEnd[], buses: Buses): ReturnEnd {
  const node = innerReturnOf(frame);
  const lowestFirst = [...ends].sort((a, b) => b.y - a.y);
  const main = lowestFirst.find(({ taps }) => taps.length > 0) ?? lowestFirst[0]!;
  for (const end of ends) {
    if (end !== main && end.taps.length === 0) draw(draft, node, [end.x, end.y], [end.x, main.y], [main.x, main.y]);
  }
  const taps = ends.flatMap((end) => end.taps);
  addTo(buses, taps);
  return { ...main, taps };
}

/** Speakers in series: from each one's return to the next one's upper rail, at the right if that rail holds nothing in series. */
function joinInSeries(draft: Draft, frame: Frame, ends: readonly ReturnEnd[], buses: Buses): void {
  frame.children.slice(1).forEach((next, k) => {
    const before = ends[k]!;
    const node = hotOf(next);
    if (before.taps.length > 0 && isWay(next) && next.stage.row.gaps.every(({ block }) => block === null)) {
      addTo(buses, [...before.taps, { node, x: next.xs.at(-1)!, y: next.hotY }]);
    } else {
      const x = frame.busX + 1;
      draw(draft, node, [before.x, before.y], [x, before.y], [x, next.hotY], [next.xs[0]!, next.hotY]);
    }
  });
}

export function addTo(buses: Buses, taps: readonly Tap[]): void {
  for (const tap of taps) {
    const known = buses.get(tap.node) ?? [];
    if (!known.some(({ y }) => y === tap.y)) known.push(tap);
    buses.set(tap.node, known);
  }
}
