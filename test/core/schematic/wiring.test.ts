import { describe, expect, it } from 'vitest';
import { routeNodes } from '../../../src/core/schematic/routeNodes.ts';
import { addPin, blankSheet, cover, indexOf, type Sheet } from '../../../src/core/schematic/sheet.ts';
import { traceWires } from '../../../src/core/schematic/traceWires.ts';
import { layWire, pruneWires } from '../../../src/core/schematic/wiring.ts';

const sheetOf = (nodes: number): Sheet => blankSheet({ left: 0, right: 10, top: 0, bottom: 10 }, nodes);
const straight = (sheet: Sheet, x1: number, y1: number, x2: number, y2: number): number[] => {
  const count = 2 * Math.max(Math.abs(x2 - x1), Math.abs(y2 - y1));
  return Array.from({ length: count + 1 }, (_, k) =>
    indexOf(sheet, { x: x1 + ((x2 - x1) * k) / count, y: y1 + ((y2 - y1) * k) / count }),
  );
};

describe('wires on the grid', () => {
  it('may cross squarely, but not touch, run along or end on another node', () => {
    const sheet = sheetOf(2);
    expect(layWire(sheet, 1, straight(sheet, 1, 5, 9, 5))).toBe(true);
    expect(layWire(sheet, 2, straight(sheet, 5, 1, 5, 9))).toBe(true);
    expect(layWire(sheet, 2, straight(sheet, 3, 1, 3, 5))).toBe(false);
    expect(layWire(sheet, 2, straight(sheet, 2, 5, 4, 5))).toBe(false);
    expect(layWire(sheet, 1, straight(sheet, 5, 3, 9, 3))).toBe(false);
  });

  it('may not pass through the end or the corner of another node', () => {
    const sheet = sheetOf(2);
    layWire(sheet, 1, straight(sheet, 1, 5, 5, 5));
    expect(layWire(sheet, 2, straight(sheet, 5, 1, 5, 9))).toBe(false);
    layWire(sheet, 1, straight(sheet, 5, 5, 5, 8));
    expect(layWire(sheet, 2, straight(sheet, 5, 1, 5, 4.5))).toBe(true);
    expect(layWire(sheet, 2, straight(sheet, 5, 4.5, 5, 6))).toBe(false);
  });

  it('keep out of what is covered and away from other pins', () => {
    const sheet = sheetOf(2);
    cover(sheet, { left: 4, right: 6, top: 4, bottom: 6 });
    addPin(sheet, { x: 2, y: 2 }, 2);
    expect(layWire(sheet, 1, straight(sheet, 1, 5, 9, 5))).toBe(false);
    expect(layWire(sheet, 1, straight(sheet, 1, 2, 3, 2))).toBe(false);
    expect(layWire(sheet, 2, straight(sheet, 1, 2, 3, 2))).toBe(true);
  });

  it('that lead nowhere are taken off', () => {
    const sheet = sheetOf(1);
    addPin(sheet, { x: 2, y: 2 }, 1);
    addPin(sheet, { x: 6, y: 2 }, 1);
    layWire(sheet, 1, straight(sheet, 2, 2, 8, 2));
    layWire(sheet, 1, straight(sheet, 4, 2, 4, 6));
    pruneWires(sheet);
    expect(traceWires(sheet, ['a']).wires).toEqual([
      {
        node: 'a',
        points: [
          { x: 2, y: 2 },
          { x: 6, y: 2 },
        ],
      },
    ]);
  });

  it('find their way round a box with as few bends as can be', () => {
    const sheet = sheetOf(1);
    addPin(sheet, { x: 1.5, y: 5 }, 1);
    addPin(sheet, { x: 8.5, y: 5 }, 1);
    cover(sheet, { left: 4, right: 6, top: 2, bottom: 6 });
    expect(routeNodes(sheet)).toBe(true);
    const [wire] = traceWires(sheet, ['a']).wires;
    expect(wire!.points.length).toBeLessThanOrEqual(4);
  });

  it('say so when there is none', () => {
    const sheet = sheetOf(1);
    addPin(sheet, { x: 2, y: 5 }, 1);
    addPin(sheet, { x: 8, y: 5 }, 1);
    cover(sheet, { left: 5, right: 5, top: 0, bottom: 10 });
    expect(routeNodes(sheet)).toBe(false);
  });

  it('get a dot where three meet, none where two cross', () => {
    const sheet = sheetOf(2);
    for (const [x, y, node] of [
      [1, 5, 1],
      [9, 5, 1],
      [3, 9, 1],
      [6, 1, 2],
      [6, 9, 2],
    ] as const) {
      addPin(sheet, { x, y }, node);
    }
    layWire(sheet, 1, straight(sheet, 1, 5, 9, 5));
    layWire(sheet, 1, straight(sheet, 3, 5, 3, 9));
    layWire(sheet, 2, straight(sheet, 6, 1, 6, 9));
    expect(traceWires(sheet, ['a', 'b']).dots).toEqual([{ x: 3, y: 5, node: 'a' }]);
  });
});
