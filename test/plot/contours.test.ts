import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ContourGrid, type ContourLine, contours, readGrid } from '../../src/plot/index.ts';

const gridOf = (columns: number, rows: number, f: (x: number, y: number) => number): ContourGrid => ({
  columns,
  rows,
  values: Float64Array.from({ length: columns * rows }, (_, at) => f(at % columns, Math.floor(at / columns))),
});
const ends = ({ xs, ys }: ContourLine) => [
  [xs[0]!, ys[0]!],
  [xs.at(-1)!, ys.at(-1)!],
];

describe('contours', () => {
  it('of a cone are circles of the level’s radius, closed, and as long as their circumference', () => {
    const grid = gridOf(41, 41, (x, y) => Math.hypot(x - 20, y - 20));
    for (const radius of [5, 11.5, 18]) {
      const [circle, ...rest] = contours(grid, radius);
      expect(rest).toEqual([]);
      expect(circle!.closed).toBe(true);
      let length = 0;
      circle!.xs.forEach((x, k) => {
        const y = circle!.ys[k]!;
        // A chord of a cell's edge misses the circle by its sagitta, 1/(8 r) at most.
        expect(Math.abs(Math.hypot(x - 20, y - 20) - radius)).toBeLessThan(1 / (8 * radius));
        const next = (k + 1) % circle!.xs.length;
        length += Math.hypot(circle!.xs[next]! - x, circle!.ys[next]! - y);
      });
      expect(Math.abs(length / (2 * Math.PI * radius) - 1)).toBeLessThan(0.005);
    }
    expect(contours(grid, 100)).toEqual([]);
  });

  it('of a plane is one straight line from border to border', () => {
    const [line, ...rest] = contours(
      gridOf(8, 5, (x, y) => x + 2 * y),
      6.5,
    );
    expect(rest).toEqual([]);
    expect(line!.closed).toBe(false);
    line!.xs.forEach((x, k) => {
      expect(x + 2 * line!.ys[k]!).toBeCloseTo(6.5, 12);
    });
    // Four rows and seven columns are crossed; the higher side lies to the left.
    expect(line!.xs).toHaveLength(11);
    expect([line!.xs[0], line!.ys[0]]).toEqual([6.5, 0]);
  });

  it('of a saddle are two lines that do not cross, parted by the mean of the corners', () => {
    const saddle = (middle: number): ContourGrid => ({ columns: 2, rows: 2, values: Float64Array.of(1, 0, middle, 1) });
    const high = contours(saddle(0.4), 0.5);
    const low = contours(saddle(-1), 0.5);
    expect([high.length, low.length]).toEqual([2, 2]);
    // High middle: each line cuts off a low corner, (1, 0) or (0, 1). Low middle: a high one, (0, 0) or (1, 1).
    const nearTo = ({ xs, ys }: ContourLine) =>
      `${Math.round(xs[0]! + xs[1]!) > 1 ? 1 : 0}${Math.round(ys[0]! + ys[1]!) > 1 ? 1 : 0}`;
    expect(high.map(nearTo).sort()).toEqual(['01', '10']);
    expect(low.map(nearTo).sort()).toEqual(['00', '11']);
    const turned = contours({ columns: 2, rows: 2, values: Float64Array.of(0, 1, 1, 0.4) }, 0.5);
    expect(turned.map(nearTo).sort()).toEqual(['00', '11']);
  });

  it('leaves masked cells out and ends beside them', () => {
    const grid = gridOf(9, 9, (x) => x);
    const masked = new Uint8Array(81);
    masked[4 * 9 + 4] = 1;
    const lines = contours({ ...grid, masked }, 4.5);
    expect(lines).toHaveLength(2);
    for (const line of lines) for (const y of line.ys) expect(y <= 3 || y >= 5).toBe(true);
    const broken = { ...grid, values: grid.values.map((value, at) => (at === 40 ? Number.NaN : value)) };
    expect(contours(broken, 4.5)).toHaveLength(2);
    expect(() => contours({ columns: 3, rows: 3, values: new Float64Array(8) }, 0)).toThrow(RangeError);
  });

  it('every point lies on its level, every line is closed or ends at the border, none is left over (seed 110)', () => {
    const any = fc
      .record({ columns: fc.integer({ min: 2, max: 7 }), rows: fc.integer({ min: 2, max: 7 }) })
      .chain(({ columns, rows }) =>
        fc.record({
          columns: fc.constant(columns),
          rows: fc.constant(rows),
          values: fc.array(fc.integer({ min: -4, max: 4 }), { minLength: columns * rows, maxLength: columns * rows }),
        }),
      );
    fc.assert(
      fc.property(any, fc.constantFrom(0, 0.5, -1.25, 2), ({ columns, rows, values }, level) => {
        const grid = { columns, rows, values: Float64Array.from(values) };
        const lines = contours(grid, level);
        let points = 0;
        for (const line of lines) {
          points += line.xs.length;
          line.xs.forEach((x, k) => {
            expect(readGrid(grid, x, line.ys[k]!)).toBeCloseTo(level, 12);
            if (k > 0) {
              expect(Math.floor(Math.max(x, line.xs[k - 1]!) - 1e-12) - Math.min(x, line.xs[k - 1]!)).toBeLessThan(1);
              expect(Math.hypot(x - line.xs[k - 1]!, line.ys[k]! - line.ys[k - 1]!)).toBeLessThanOrEqual(Math.SQRT2);
            }
          });
          if (line.closed) continue;
          for (const [x, y] of ends(line)) {
            expect(x === 0 || y === 0 || x === columns - 1 || y === rows - 1).toBe(true);
          }
        }
        // Each edge of the grid that the level crosses carries one point of one line.
        let crossed = 0;
        const above = (at: number): boolean => grid.values[at]! >= level;
        for (let at = 0; at < columns * rows; at++) {
          if (at % columns < columns - 1 && above(at) !== above(at + 1)) crossed++;
          if (at < columns * (rows - 1) && above(at) !== above(at + columns)) crossed++;
        }
        expect(points).toBe(crossed);
      }),
      { seed: 110, numRuns: 400 },
    );
  });
});

describe('readGrid', () => {
  it('is exact for a plane, and null outside and beside what has no value', () => {
    const plane = gridOf(5, 4, (x, y) => 3 * x - 2 * y + 1);
    for (const [x, y] of [
      [0, 0],
      [4, 3],
      [2.25, 1.75],
    ] as const)
      expect(readGrid(plane, x, y)).toBeCloseTo(3 * x - 2 * y + 1, 12);
    expect(readGrid(plane, 4.01, 1)).toBeNull();
    expect(readGrid(plane, Number.NaN, 1)).toBeNull();
    const masked = new Uint8Array(20);
    masked[6] = 1;
    expect(readGrid({ ...plane, masked }, 1.5, 1.5)).toBeNull();
    expect(readGrid({ ...plane, masked }, 2.5, 1.5)).not.toBeNull();
    expect(
      readGrid(
        gridOf(1, 1, () => 7),
        0,
        0,
      ),
    ).toBe(7);
  });
});
