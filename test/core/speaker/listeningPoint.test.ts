import { expect, it } from 'vitest';
import { listeningPoint } from '../../../src/core/speaker/listeningPoint.ts';

const listening = {
  distanceM: 2,
  heightM: 0.9,
  horizontalDeg: 0,
  verticalDeg: 0,
  standHeightM: 0.3,
  radiation: 'half-space',
} as const;

it('lies in front of the listening height on axis, less the stand', () => {
  expect(listeningPoint(listening)).toEqual({ xM: 0, yM: expect.closeTo(0.6, 12), zM: 2 });
});

it('keeps its distance to the point of the front at the listening height at any angle', () => {
  for (const [horizontalDeg, verticalDeg] of [
    [30, 0],
    [-90, 10],
    [15, -40],
    [180, 0],
  ] as const) {
    const p = listeningPoint({ ...listening, horizontalDeg, verticalDeg });
    expect(Math.hypot(p.xM, p.yM - 0.6, p.zM)).toBeCloseTo(2, 12);
  }
  expect(listeningPoint({ ...listening, horizontalDeg: 30 }).xM).toBeCloseTo(1, 12);
  expect(listeningPoint({ ...listening, verticalDeg: 30 }).yM).toBeCloseTo(1.6, 12);
});
