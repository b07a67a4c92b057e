/**
 * Which points of a curve are worth drawing: per pixel column the first, the lowest, the highest and the last, so that
 * no peak is lost and the cost is bounded by the width of the picture, not by the number of points. Points outside the
 * columns `fromPx` to `toPx` are left out, save the nearest on either side, which lead the line to the edge.
 * `xsPx` ascends; a value of `ysPx` that is not finite is a gap and is kept as one.
 * Returns ascending indices, at most five per column.
 */
export function pixelPoints(
  xsPx: ArrayLike<number>,
  ysPx: ArrayLike<number>,
  fromPx: number,
  toPx: number,
): readonly number[] {
  const kept: number[] = [];
  const count = xsPx.length;
  let start = 0;
  while (start < count - 1 && (xsPx[start + 1] ?? 0) < fromPx) start++;
  while (start < count) {
    const column = Math.floor(xsPx[start] ?? 0);
    let end = start;
    while (end + 1 < count && Math.floor(xsPx[end + 1] ?? 0) === column) end++;
    keepColumn(kept, ysPx, start, end);
    if ((xsPx[end] ?? 0) > toPx) break;
    start = end + 1;
  }
  return kept;
}

function keepColumn(kept: number[], ysPx: ArrayLike<number>, start: number, end: number): void {
  if (end - start < 4) {
    for (let index = start; index <= end; index++) kept.push(index);
    return;
  }
  let least = start;
  let greatest = start;
  let lowest = Number.POSITIVE_INFINITY;
  let highest = Number.NEGATIVE_INFINITY;
  let gap = -1;
  for (let index = start; index <= end; index++) {
    const y = ysPx[index] ?? Number.NaN;
    if (!Number.isFinite(y)) gap = index;
    if (y < lowest) [least, lowest] = [index, y];
    if (y > highest) [greatest, highest] = [index, y];
  }
  const chosen = new Set([start, least, greatest, end]);
  if (gap >= 0) chosen.add(gap);
  kept.push(...[...chosen].sort((a, b) => a - b));
}
