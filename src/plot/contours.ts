/** Values over a grid, row by row: column x, row y at `y * columns + x`. A point whose `masked` is 1 has no value. */
export interface ContourGrid {
  readonly columns: number;
  readonly rows: number;
  readonly values: Float64Array;
  readonly masked?: Uint8Array;
}

/** A line of one level in grid coordinates: x from 0 to columns − 1, y from 0 to rows − 1. Closed: the last point joins the first. */
export interface ContourLine {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly closed: boolean;
}

/**
 * Lines along which a grid has a level: marching squares, linear along the edges of cells, joined into as few lines as there are.
 *
 * The higher side lies to the left as a line runs, in a picture with y downwards. A value equal to the level counts as above it. A saddle is
 * decided by the mean of its four corners. Cells with a masked corner, or one that is not a finite number, are left out: lines end there
 * as at the border. Throws a RangeError when the values do not fill the grid.
 * Source: common practice (marching squares).
 * @example contours({ columns: 2, rows: 2, values: Float64Array.of(0, 1, 0, 1) }, 0.5)[0].xs gives 0.5 twice
 */
export function contours(grid: ContourGrid, level: number): readonly ContourLine[] {
  const { columns, rows, values, masked } = grid;
  if (values.length !== columns * rows) throw new RangeError('The values do not fill the grid.');
  // Each edge of a cell has a number: those along x first, then those along y.
  const along = (x: number, y: number): number => y * columns + x;
  const upright = columns * rows;
  const usable = (at: number): boolean => masked?.[at] !== 1 && Number.isFinite(values[at]);
  const nextOf = new Map<number, number>();
  const entered = new Set<number>();
  const join = (from: number, to: number): void => {
    nextOf.set(from, to);
    entered.add(to);
  };
  for (let y = 0; y + 1 < rows; y++) {
    for (let x = 0; x + 1 < columns; x++) {
      const at = along(x, y);
      const corners = [at, at + 1, at + columns + 1, at + columns] as const;
      if (!corners.every(usable)) continue;
      const [a, b, c, d] = corners.map((corner) => values[corner]! >= level);
      const [top, right, bottom, left] = [at, upright + at + 1, at + columns, upright + at];
      // Seen clockwise from the top left corner, a line enters where low turns high and leaves where high turns low.
      const rises: number[] = [];
      const falls: number[] = [];
      for (const [one, other, edge] of [
        [a, b, top],
        [b, c, right],
        [c, d, bottom],
        [d, a, left],
      ] as const) {
        if (!one && other) rises.push(edge);
        if (one && !other) falls.push(edge);
      }
      if (rises.length === 1) join(rises[0]!, falls[0]!);
      if (rises.length === 2) {
        const mean = corners.reduce((sum, corner) => sum + values[corner]!, 0) / 4;
        // Clockwise the edges alternate. With a high middle the low corners are cut off, else the high ones.
        const clockwise = a
          ? [falls[0]!, rises[0]!, falls[1]!, rises[1]!]
          : [rises[0]!, falls[0]!, rises[1]!, falls[1]!];
        const [first, second, third, fourth] = clockwise as [number, number, number, number];
        const highMiddle = mean >= level;
        if (a && highMiddle) {
          join(second, first);
          join(fourth, third);
        } else if (a) {
          join(fourth, first);
          join(second, third);
        } else if (highMiddle) {
          join(first, fourth);
          join(third, second);
        } else {
          join(first, second);
          join(third, fourth);
        }
      }
    }
  }
  const lines: ContourLine[] = [];
  const follow = (start: number, closed: boolean): void => {
    const edges = [start];
    let edge = nextOf.get(start);
    nextOf.delete(start);
    while (edge !== undefined && edge !== start) {
      edges.push(edge);
      const next = nextOf.get(edge);
      nextOf.delete(edge);
      edge = next;
    }
    lines.push(lineThrough(edges, grid, level, closed));
  };
  for (const start of [...nextOf.keys()]) if (!entered.has(start)) follow(start, false);
  for (const start of [...nextOf.keys()]) if (nextOf.has(start)) follow(start, true);
  return lines;
}

function lineThrough(edges: readonly number[], grid: ContourGrid, level: number, closed: boolean): ContourLine {
  const { columns, rows, values } = grid;
  const upright = columns * rows;
  const xs = new Float64Array(edges.length);
  const ys = new Float64Array(edges.length);
  edges.forEach((edge, k) => {
    const isUpright = edge >= upright;
    const at = isUpright ? edge - upright : edge;
    const from = values[at]!;
    const to = values[isUpright ? at + columns : at + 1]!;
    const share = (level - from) / (to - from);
    xs[k] = (at % columns) + (isUpright ? 0 : share);
    ys[k] = Math.floor(at / columns) + (isUpright ? share : 0);
  });
  return { xs, ys, closed };
}
