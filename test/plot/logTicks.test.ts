import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contourLabels, logTicks, roundLevels } from '../../src/plot/index.ts';

const positive = fc.double({ min: -6, max: 6, noNaN: true }).map((e) => 10 ** e);

describe('logTicks', () => {
  it('takes the closest round values that have room', () => {
    expect(logTicks([14, 85], 300, 34)).toEqual([15, 20, 30, 40, 50, 70]);
    expect(logTicks([1, 1000], 200, 40)).toEqual([1, 10, 100, 1000]);
    expect(logTicks([5, 5], 100, 10)).toEqual([]);
  });

  it('keeps its distance and stays inside (seed 111)', () => {
    fc.assert(
      fc.property(
        positive,
        fc.double({ min: 1.2, max: 1e4, noNaN: true }),
        fc.integer({ min: 60, max: 900 }),
        (low, ratio, px) => {
          const ticks = logTicks([low, low * ratio], px, 30);
          ticks.forEach((tick, k) => {
            expect(tick).toBeGreaterThanOrEqual(low);
            expect(tick).toBeLessThanOrEqual(low * ratio);
            if (k > 0) expect((px / Math.log(ratio)) * Math.log(tick / ticks[k - 1]!)).toBeGreaterThanOrEqual(29.999);
          });
        },
      ),
      { seed: 111 },
    );
  });
});

describe('roundLevels', () => {
  it('gives no more than asked for, all between', () => {
    expect(roundLevels(22, 130, 8)).toEqual([30, 40, 50, 70, 100]);
    expect(roundLevels(0.03, 0.9, 4).length).toBeLessThanOrEqual(4);
    expect(roundLevels(1e-9, 1e9, 5)).toHaveLength(5);
    expect(roundLevels(3, 2, 5)).toEqual([]);
  });
});

describe('contourLabels', () => {
  const area = { left: 0, right: 200, top: 0, bottom: 100 };
  const straight = (y: number) => ({
    xsPx: Array.from({ length: 21 }, (_, k) => 10 * k),
    ysPx: Array.from({ length: 21 }, () => y),
    widthPx: 30,
    heightPx: 12,
  });

  it('stands on the middle of its line, and steps aside for what is taken', () => {
    expect(contourLabels([straight(50)], area, [])).toEqual([{ x: 100, y: 50 }]);
    const [moved] = contourLabels([straight(50)], area, [{ left: 90, right: 110, top: 40, bottom: 60 }]);
    expect(Math.abs(moved!.x - 100)).toBeGreaterThanOrEqual(25);
    expect(moved!.y).toBe(50);
  });

  it('never covers an earlier one, and leaves out what has no room', () => {
    const two = contourLabels([straight(50), straight(55)], area, []);
    expect(Math.abs(two[0]!.x - two[1]!.x)).toBeGreaterThanOrEqual(30);
    expect(contourLabels([straight(3)], area, [])).toEqual([null]);
    expect(contourLabels([{ ...straight(50), xsPx: [0, 20], ysPx: [50, 50] }], area, [])).toEqual([null]);
  });
});
