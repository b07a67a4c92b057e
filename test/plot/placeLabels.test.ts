import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, type LabelledCurve, placeLabels } from '../../src/plot/index.ts';

const area: Box = { left: 50, right: 850, top: 20, bottom: 300 };
const xsPx = Array.from({ length: 400 }, (_, index) => 50 + index * 2.005);
const curve = (id: string, height: (x: number) => number): LabelledCurve => ({
  id,
  xsPx,
  ysPx: xsPx.map(height),
  widthPx: 48,
  heightPx: 14,
});
const boxOf = (label: { x: number; y: number }): Box => ({
  left: label.x - 24,
  right: label.x + 24,
  top: label.y - 7,
  bottom: label.y + 7,
});
const overlap = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

test('a lone curve is named at its right-hand end, clear of the line', () => {
  const [label] = placeLabels([curve('sum', () => 150)], area);
  expect(label?.x).toBeGreaterThan(800);
  expect(Math.abs((label?.y ?? 150) - 150)).toBeGreaterThanOrEqual(7);
  expect(Math.abs((label?.y ?? 0) - 150)).toBeLessThan(14);
});

test('a curve out of sight gets no name', () => {
  expect(placeLabels([curve('gone', () => 900)], area)).toEqual([]);
});

test('each name is nearest to its own curve where three run apart', () => {
  const heights = { low: 260, middle: 160, high: 60 };
  const labels = placeLabels(
    Object.entries(heights).map(([id, y]) => curve(id, () => y)),
    area,
  );
  expect(labels).toHaveLength(3);
  for (const label of labels) {
    const nearest = Object.entries(heights).sort((a, b) => Math.abs(a[1] - label.y) - Math.abs(b[1] - label.y))[0];
    expect(nearest?.[0]).toBe(label.id);
  }
});

test('two curves that run together to the right are named where they part', () => {
  const joined = (side: number) => (x: number) => 150 + side * Math.max(0, 450 - x) * 0.3;
  const labels = placeLabels([curve('up', joined(-1)), curve('down', joined(1))], area);
  const up = labels.find((label) => label.id === 'up');
  const down = labels.find((label) => label.id === 'down');
  expect(up?.y).toBeLessThan(150);
  expect(down?.y).toBeGreaterThan(150);
});

test('names keep inside, off one another and off taken boxes (seed 44)', () => {
  const wave = fc.record({
    level: fc.double({ min: 0, max: 320, noNaN: true }),
    swing: fc.double({ min: -150, max: 150, noNaN: true }),
    turns: fc.double({ min: 0, max: 6, noNaN: true }),
  });
  const taken: Box = { left: 700, right: 850, top: 20, bottom: 60 };
  fc.assert(
    fc.property(fc.array(wave, { maxLength: 8 }), (waves) => {
      const curves = waves.map((w, index) =>
        curve(`c${index}`, (x) => w.level + w.swing * Math.sin((x / 400) * w.turns)),
      );
      const boxes = placeLabels(curves, area, [taken]).map(boxOf);
      for (const [index, box] of boxes.entries()) {
        expect(box.left).toBeGreaterThanOrEqual(area.left);
        expect(box.right).toBeLessThanOrEqual(area.right);
        expect(box.top).toBeGreaterThanOrEqual(area.top);
        expect(box.bottom).toBeLessThanOrEqual(area.bottom);
        expect(overlap(box, taken)).toBe(false);
        for (const other of boxes.slice(index + 1)) expect(overlap(box, other)).toBe(false);
      }
    }),
    { seed: 44, numRuns: 60 },
  );
});

test('a label stays while its place is about as good as the best', () => {
  const hump = (shift: number) => curve('sum', (x) => 150 - 60 * Math.exp(-(((x - 300 - shift) / 120) ** 2)));
  const first = placeLabels([hump(0)], area);
  const second = placeLabels([hump(9)], area, [], first);
  expect(second[0]?.x).toBe(first[0]?.x);
});
