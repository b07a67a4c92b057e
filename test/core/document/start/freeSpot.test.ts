import { describe, expect, it } from 'vitest';
import { freeSpot } from '../../../../src/core/document/start/freeSpot.ts';
import { twoWay } from '../twoWay.ts';

describe('freeSpot', () => {
  const circles = [
    { yM: 0.15, radiusM: 0.085 },
    { yM: 0.31, radiusM: 0.05 },
  ];

  it('finds a place that overlaps nothing and lies inside the front', () => {
    const tall = { ...twoWay, enclosure: { ...twoWay.enclosure, heightM: 0.8 } };
    for (const from of ['top', 'bottom'] as const) {
      const { xM, yM } = freeSpot(tall, 0.06, from);
      expect(xM).toBe(0);
      expect(yM).toBeGreaterThanOrEqual(0.06);
      expect(yM).toBeLessThanOrEqual(0.74);
      for (const other of circles) expect(Math.abs(other.yM - yM)).toBeGreaterThanOrEqual(other.radiusM + 0.06);
    }
    expect(freeSpot(tall, 0.06, 'top').yM).toBeGreaterThan(freeSpot(tall, 0.06, 'bottom').yM);
  });

  it('takes the middle where nothing fits', () => {
    expect(freeSpot(twoWay, 0.1, 'top')).toEqual({ xM: 0, yM: 0.2 });
  });
});
