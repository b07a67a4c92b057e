import type { Box } from '../../plot/index.ts';

/** Where the curves are within a plot of the given size: room for numbers at the left, below, and at the right if asked. */
export function plotLayout(widthPx: number, heightPx: number, remPx: number, rightAxis: boolean): Box {
  return {
    left: 2.6 * remPx,
    right: Math.max(3 * remPx, widthPx - (rightAxis ? 2.6 : 1) * remPx),
    top: 0.4 * remPx,
    bottom: Math.max(2 * remPx, heightPx - 1.4 * remPx),
  };
}
