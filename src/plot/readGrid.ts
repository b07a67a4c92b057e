import type { ContourGrid } from './contours.ts';

/**
 * A grid's value between its points, linear along x and y; null outside and where one of the four points round it has none.
 *
 * x from 0 to columns − 1, y from 0 to rows − 1.
 * @example readGrid({ columns: 2, rows: 2, values: Float64Array.of(0, 1, 2, 3) }, 0.5, 0.5) gives 1.5
 */
export function readGrid({ columns, rows, values, masked }: ContourGrid, x: number, y: number): number | null {
  if (!(x >= 0 && y >= 0 && x <= columns - 1 && y <= rows - 1)) return null;
  const column = Math.min(Math.floor(x), Math.max(columns - 2, 0));
  const row = Math.min(Math.floor(y), Math.max(rows - 2, 0));
  const right = Math.min(column + 1, columns - 1);
  const below = Math.min(row + 1, rows - 1);
  const [a, b, c, d] = [
    row * columns + column,
    row * columns + right,
    below * columns + column,
    below * columns + right,
  ];
  for (const at of [a, b, c, d]) if (masked?.[at] === 1 || !Number.isFinite(values[at])) return null;
  const [across, down] = [x - column, y - row];
  const above = values[a]! * (1 - across) + values[b]! * across;
  const under = values[c]! * (1 - across) + values[d]! * across;
  return above * (1 - down) + under * down;
}
