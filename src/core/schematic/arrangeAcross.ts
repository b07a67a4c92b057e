import { type Frame, isWay } from './frame.ts';
import { partAcross, toHalf } from './metrics.ts';

export interface Across {
  /** Left edge of the way lanes. */
  readonly trunkWidth: number;
  readonly speakerX: number;
}

/**
 * Gives every row its columns: shared rows packed from the left, one beyond the other where they overlap in height; ways
 * from one common edge to one common line of speakers, evenly.
 */
export function arrangeAcross(frames: readonly Frame[], room: number): Across {
  const span = (frame: Frame): number => frame.lanes.at(-1)! - frame.lanes[0]!;
  const trunks = frames
    .filter((frame) => !isWay(frame))
    .sort((a, b) => a.depth - b.depth || span(b) - span(a) || a.lanes[0]! - b.lanes[0]!);
  const placed: Frame[] = [];
  for (const frame of trunks) {
    const left = placed
      .filter((other) => other.lanes[0]! <= frame.lanes.at(-1)! && frame.lanes[0]! <= other.lanes.at(-1)!)
      .map((other) => other.busX + 2 + room);
    const start = Math.max(1, ...left);
    let x = start + frame.size.start;
    frame.xs = [x];
    for (const width of frame.size.widths) {
      x += width;
      frame.xs.push(x);
    }
    frame.busX = x + frame.size.end;
    placed.push(frame);
  }
  const trunkWidth = Math.max(0, ...placed.map((frame) => frame.busX)) + 1 + room;

  const ways = frames.filter(isWay);
  const needs = ways.map(({ size }) => size.start + size.widths.reduce((a, b) => a + b, 0));
  const length = Math.max(0, ...needs);
  for (const frame of ways) {
    const { start, widths } = frame.size;
    let x = 0;
    const xs = evenly(widths, length - start).map((width) => {
      x += width;
      return trunkWidth + start + toHalf(x);
    });
    frame.xs = [trunkWidth + start, ...xs];
  }
  return { trunkWidth, speakerX: trunkWidth + (ways.length > 0 ? length : partAcross) };
}

/** Widens the narrowest gaps to one common width until they fill `length`. */
function evenly(widths: readonly number[], length: number): number[] {
  const narrowFirst = [...widths].sort((a, b) => a - b);
  let wide = widths.reduce((a, b) => a + b, 0);
  let count = 0;
  let common = 0;
  for (const width of narrowFirst) {
    if (count > 0 && common <= width) break;
    wide -= width;
    count += 1;
    common = (length - wide) / count;
  }
  return widths.map((width) => Math.max(width, common));
}
