import { type Draft, draw } from './draft.ts';
import type { Buses, Tap } from './drawFrames.ts';

/**
 * Joins at the right edge what belongs to one node. Two rails next to each other join on the speakers' axis `nearX`, the
 * others beyond the speakers' texts from `farX` on, shorter buses nearer.
 */
export function drawBuses(draft: Draft, buses: Buses, nearX: number, farX: number, railYs: readonly number[]): void {
  const placed: { from: number; to: number; track: number }[] = [];
  const extent = (taps: readonly Tap[]): [number, number] => {
    const ys = taps.map(({ y }) => y);
    return [Math.min(...ys), Math.max(...ys)];
  };
  const shortFirst = [...buses]
    .filter(([, taps]) => taps.length > 1)
    .map(([node, taps]) => ({ node, taps, extent: extent(taps) }))
    .sort((a, b) => a.extent[1] - a.extent[0] - (b.extent[1] - b.extent[0]));
  for (const {
    node,
    taps,
    extent: [from, to],
  } of shortFirst) {
    const isNear = taps.every(({ x }) => x === nearX) && !railYs.some((y) => y > from && y < to);
    let x = nearX;
    if (!isNear) {
      const inner = placed.filter((other) => other.from <= to && from <= other.to).map(({ track }) => track);
      const track = Math.max(-1, ...inner) + 1;
      placed.push({ from, to, track });
      x = farX + track;
    }
    for (const tap of taps) draw(draft, node, [tap.x, tap.y], [x, tap.y]);
    const ys = taps.map(({ y }) => y).sort((a, b) => a - b);
    ys.slice(1).forEach((y, k) => {
      draw(draft, node, [x, ys[k]!], [x, y]);
    });
  }
}
