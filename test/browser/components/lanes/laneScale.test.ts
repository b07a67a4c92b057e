import { expect, test } from 'vitest';
import type { SchematicLane } from '../../../../src/core/schematic/plan.ts';
import { drawingUnit, rowUnit } from '../../../../src/ui/lanes/drawingUnit.ts';
import { laneLayout } from '../../../../src/ui/lanes/laneLayout.ts';
import { laneScale } from '../../../../src/ui/lanes/laneScale.ts';
import { lanesOf } from '../../../../src/ui/lanes/lanesOf.ts';

const lane = (partId: string, top: number, bottom: number): SchematicLane => ({ kind: 'way', partId, top, bottom });
const lanes: readonly SchematicLane[] = [
  lane('LS2', 0, 10),
  lane('LS1', 10, 24),
  { kind: 'shared', partId: null, top: 1, bottom: 24 },
];
const none = () => 0;

test('without other wishes the drawing keeps its own proportions', () => {
  const scale = laneScale(lanes, 24, 10, none, none);
  expect(scale.heightPx).toBe(240);
  expect(scale.rows.map((row) => [row.lane.partId, row.topPx, row.heightPx])).toEqual([
    ['LS2', 0, 100],
    ['LS1', 100, 140],
  ]);
  for (const y of [0, 3.5, 10, 17, 24]) expect(scale.toPx(y)).toBeCloseTo(10 * y, 9);
});

test('a taller card stretches its row; inside a lane the drawing stays rigid', () => {
  const scale = laneScale(lanes, 24, 10, (l) => (l.partId === 'LS2' ? 160 : 0), none);
  expect(scale.rows[1]?.topPx).toBe(160);
  expect(scale.toPx(8) - scale.toPx(2)).toBeCloseTo(60, 9);
  expect(scale.toPx(20) - scale.toPx(12)).toBeCloseTo(80, 9);
  // Near the top of the row, beside the driver's name.
  expect(scale.toPx(0)).toBe(18);
});

test('room below a lane moves the next one and nothing above', () => {
  const scale = laneScale(lanes, 24, 10, none, (l) => (l.partId === 'LS2' ? 250 : 0));
  expect(scale.toPx(9)).toBeCloseTo(90, 9);
  expect(scale.rows[1]?.topPx).toBe(350);
  expect(scale.heightPx).toBe(490);
});

test('heights never run backwards', () => {
  const scale = laneScale(
    lanes,
    24,
    7.3,
    () => 137,
    (l) => (l.partId === 'LS2' ? 90 : 0),
  );
  let before = Number.NEGATIVE_INFINITY;
  for (let y = -1; y <= 26; y += 0.25) {
    expect(scale.toPx(y)).toBeGreaterThanOrEqual(before);
    before = scale.toPx(y);
  }
});

test('a way that the last plan lacks gets a row below, one that is gone loses its row', () => {
  const plan = { lanes } as unknown as Parameters<typeof lanesOf>[0];
  const ways = ['LS1', 'LS3'].map((speakerId, index) => ({ speakerId, driver: null, index, name: speakerId }));
  expect(
    lanesOf(plan, ways)
      .filter((l) => l.kind === 'way')
      .map((l) => l.partId),
  ).toEqual(['LS1', 'LS3']);
  expect(lanesOf(null, ways).map((l) => [l.top, l.bottom])).toEqual([
    [0, 8],
    [8, 16],
  ]);
});

test('drawing and layout follow the space', () => {
  expect(laneLayout(1440, 16)).toBe('three-columns');
  expect(laneLayout(1024, 16)).toBe('enclosure-below');
  expect(laneLayout(1440, 22)).toBe('enclosure-below');
  expect(laneLayout(390, 16)).toBe('stacked');
  expect(drawingUnit(50, 600, 16)).toBe(12);
  expect(drawingUnit(50, 5000, 16)).toBeCloseTo(0.86 * 16, 9);
  // Too narrow: it scrolls instead of shrinking further.
  expect(drawingUnit(50, 100, 16)).toBeCloseTo(0.69 * 16, 9);
  expect(rowUnit(20)).toBe(20);
  expect(rowUnit(11)).toBeGreaterThanOrEqual(12);
});
