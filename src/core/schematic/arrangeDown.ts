import { type Frame, hasReturnParts, isWay, lowestRun } from './frame.ts';
import { horizontalReach, lead, rowGap, toHalf } from './metrics.ts';

/** One way lane's band. */
export interface Band {
  top: number;
  /** Lower edge of the free space over the lane. */
  ceiling: number;
  hotY: number;
  returnY: number;
  bottom: number;
}

/**
 * Gives every row its height. Ways stand one below the other, `above[lane]` units of free space over each; a shared row
 * stands level with the only way it feeds, else in the middle of those.
 */
export function arrangeDown(frames: readonly Frame[], laneCount: number, above: readonly number[]): Band[] {
  const rises = Array.from({ length: laneCount }, () => lead + 1);
  const drops = Array.from({ length: laneCount }, () => 0);
  const feet = Array.from({ length: laneCount }, () => lead);
  for (const frame of frames) {
    const [first, last] = lowestRun(frame);
    if (!isWay(frame) && hasReturnParts(frame)) feet[last] = horizontalReach + rowGap;
    if (first !== last) continue;
    rises[first] = Math.max(rises[first]!, frame.size.rise);
    drops[first] = Math.max(drops[first]!, frame.size.drop);
  }
  const shared = frames.filter((frame) => !isWay(frame) && lowestRun(frame)[0] !== lowestRun(frame)[1]);
  for (const frame of shared) {
    const [first] = lowestRun(frame);
    if (isLevelWithTop(frame)) rises[first] = Math.max(rises[first]!, frame.size.rise);
  }
  let bands = stack(rises, drops, feet, above);
  for (const frame of shared) {
    const [first, last] = lowestRun(frame);
    const missing = frame.size.rise + frame.size.drop - (bands[last]!.returnY - bands[first]!.top);
    if (missing > 0) drops[last]! += Math.ceil(missing);
    bands = stack(rises, drops, feet, above);
  }

  for (const frame of [...frames].sort((a, b) => b.depth - a.depth)) standFrame(frame, bands);
  return bands;
}

/**
 * A way, and a shared row that feeds one way only, stand level with the lane. A shared row without parts on its rail
 * reaches over all its ways, so that an amplifier stands in their middle; one that feeds a single stage is level with it.
 */
function standFrame(frame: Frame, bands: readonly Band[]): void {
  const { size, children, stage } = frame;
  const [first, last] = lowestRun(frame);
  const [upper, lower] = [bands[first]!, bands[last]!];
  const fed = stage.split === 'series' ? children.slice(0, 1) : children;
  frame.railYs = size.railLifts.map((lift) => lower.returnY - lift);
  if (first === last) {
    frame.hotY = upper.hotY;
  } else if (isLevelWithTop(frame)) {
    frame.hotY = Math.min(...fed.map((child) => child.hotY).filter((y) => y >= upper.hotY), lower.returnY - size.drop);
  } else {
    const [least, most] = [upper.top + size.rise, lower.returnY - size.drop];
    const middle = (upper.hotY + most) / 2;
    const standing = within(bands, middle, size.rise, size.drop, least, most);
    // Straight on into a way where one is near.
    const near = fed.map((child) => child.hotY).filter((y) => Math.abs(y - standing) <= 3 && y >= least && y <= most);
    frame.hotY = near[0] ?? standing;
    if (!hasReturnParts(frame)) frame.railYs = [frame.hotY + size.drop];
  }
  frame.legY = (top, bottom, height) => {
    const half = height / 2;
    return within(bands, (top + bottom) / 2, half, half, top + half, bottom - half);
  };
}

/**
 * The height nearest to `wanted`, from `least` to `most`, at which what reaches `up` and `down` from there stands in one
 * band, so that a screen may draw the bands farther apart; `wanted` itself where no band has room.
 */
function within(bands: readonly Band[], wanted: number, up: number, down: number, least: number, most: number): number {
  const near = (y: number, from: number, to: number): number => Math.max(from, Math.min(y, to));
  const fits = bands.flatMap(({ top, bottom }) => {
    const [from, to] = [Math.max(least, top + up + 0.5), Math.min(most, bottom - down - 0.5)];
    return from <= to ? [near(wanted, from, to)] : [];
  });
  const best = fits.sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))[0];
  return toHalf(best ?? near(wanted, least, most));
}

const isLevelWithTop = ({ stage, children }: Frame): boolean =>
  stage.row.gaps.every(({ block }) => block === null) || stage.split === 'series' || children.length === 1;

function stack(
  rises: readonly number[],
  drops: readonly number[],
  feet: readonly number[],
  above: readonly number[],
): Band[] {
  let y = 0;
  return rises.map((rise, lane) => {
    const top = y;
    const ceiling = top + (above[lane] ?? 0);
    const hotY = ceiling + rise;
    const returnY = hotY + drops[lane]!;
    y = returnY + feet[lane]!;
    return { top, ceiling, hotY, returnY, bottom: y };
  });
}
