import type { Box } from './labelField.ts';
import { boxesOverlap } from './labelField.ts';

/** A line in pixels that wants its value written on it. */
export interface LabelledLine {
  readonly xsPx: ArrayLike<number>;
  readonly ysPx: ArrayLike<number>;
  readonly widthPx: number;
  readonly heightPx: number;
}

const STARTS = [0.5, 0.38, 0.62];

/**
 * Where the value of each line stands on it, the middle of its text; null where it fits nowhere.
 *
 * On a point of the line, the nearer to the middle of its course the better (for neighbours in turn a little before or after it, so that they do not crowd); inside `area`, over no `taken` box and no earlier label. All in
 * pixels. Pure. Lines shorter than twice their text get none.
 */
export function contourLabels(
  lines: readonly LabelledLine[],
  area: Box,
  taken: readonly Box[],
): readonly ({ readonly x: number; readonly y: number } | null)[] {
  const boxes: Box[] = [...taken];
  return lines.map((line, order) => {
    const best = Math.floor(line.xsPx.length * STARTS[order % STARTS.length]!);
    const count = line.xsPx.length;
    if (courseOf(line) < 2 * line.widthPx) return null;
    for (let step = 0; step < 2 * count; step++) {
      // Outwards from there, to either side in turn.
      const at = best + (step % 2 === 0 ? step / 2 : -(step + 1) / 2);
      if (at < 0 || at >= count) continue;
      const [x, y] = [line.xsPx[at]!, line.ysPx[at]!];
      const box = {
        left: x - line.widthPx / 2,
        right: x + line.widthPx / 2,
        top: y - line.heightPx / 2,
        bottom: y + line.heightPx / 2,
      };
      const inside =
        box.left >= area.left && box.right <= area.right && box.top >= area.top && box.bottom <= area.bottom;
      if (!inside || boxes.some((other) => boxesOverlap(other, box))) continue;
      boxes.push(box);
      return { x, y };
    }
    return null;
  });
}

const courseOf = ({ xsPx, ysPx }: LabelledLine): number => {
  let length = 0;
  for (let k = 1; k < xsPx.length; k++) length += Math.hypot(xsPx[k]! - xsPx[k - 1]!, ysPx[k]! - ysPx[k - 1]!);
  return length;
};
