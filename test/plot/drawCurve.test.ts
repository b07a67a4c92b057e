import fc from 'fast-check';
import { expect, test } from 'vitest';
import { curvePath, drawCurve, pixelPoints } from '../../src/plot/index.ts';

class Recorder {
  readonly strokes: [number, number][][] = [];
  moveTo(x: number, y: number): void {
    this.strokes.push([[x, y]]);
  }
  lineTo(x: number, y: number): void {
    this.strokes.at(-1)?.push([x, y]);
  }
  closePath(): void {
    throw new Error('A curve is never closed.');
  }
}

test('a gap in the values is a gap in the line', () => {
  const recorder = new Recorder();
  drawCurve(recorder, [0, 10, 20, 30, 40], [1, 2, Number.NaN, 4, 5], 0, 40);
  expect(recorder.strokes).toEqual([
    [
      [0, 1],
      [10, 2],
    ],
    [
      [30, 4],
      [40, 5],
    ],
  ]);
});

test('the SVG path draws the same points', () => {
  expect(curvePath([0, 10, 20], [1, 2.26, 3], 0, 20)).toBe('M0,1L10,2.3L20,3');
});

test('drawing cost is bounded by pixels: five points a column at most', () => {
  const count = 100_000;
  const xs = Float64Array.from({ length: count }, (_, index) => (index / count) * 300);
  const ys = Float64Array.from({ length: count }, (_, index) => Math.sin(index));
  expect(pixelPoints(xs, ys, 0, 300).length).toBeLessThanOrEqual(5 * 301);
});

test('no peak and no gap is lost, and the order is kept (seed 43)', () => {
  const heights = fc.array(fc.oneof(fc.double({ min: -99, max: 99, noNaN: true }), fc.constant(Number.NaN)), {
    minLength: 2,
    maxLength: 200,
  });
  fc.assert(
    fc.property(heights, fc.integer({ min: 1, max: 40 }), (ys, width) => {
      const xs = ys.map((_, index) => (index / ys.length) * width);
      const kept = pixelPoints(xs, ys, 0, width);
      expect([...kept].sort((a, b) => a - b)).toEqual([...kept]);
      const finite = ys.filter(Number.isFinite);
      const keptFinite = kept.map((index) => ys[index] ?? Number.NaN).filter(Number.isFinite);
      expect(Math.max(...keptFinite)).toBe(Math.max(...finite));
      expect(Math.min(...keptFinite)).toBe(Math.min(...finite));
      expect(kept.some((index) => Number.isNaN(ys[index]))).toBe(ys.some(Number.isNaN));
    }),
    { seed: 43 },
  );
});

test('only what is in sight is drawn, with a neighbour on either side', () => {
  const xs = Array.from({ length: 100 }, (_, index) => index * 10);
  const kept = pixelPoints(xs, xs, 255, 305);
  expect(kept).toEqual([25, 26, 27, 28, 29, 30, 31]);
});
