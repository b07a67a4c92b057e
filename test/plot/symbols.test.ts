import { describe, expect, it } from 'vitest';
import type { PartKind } from '../../src/core/circuit/part.ts';
import { returnSymbol, type SymbolPath, symbolOf, terminalSymbol } from '../../src/plot/symbols.ts';

/** Points that a path's commands end at, by replaying them. */
function pointsOf(path: string): [number, number][] {
  const points: [number, number][] = [];
  let [x, y] = [0, 0];
  for (const [, command, rest] of path.matchAll(/([MLHVhvaZ])([^MLHVhvaZ]*)/g)) {
    const n = (rest!.match(/-?(\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    if (command === 'M' || command === 'L') [x, y] = [n[0]!, n[1]!];
    if (command === 'H') x = n[0]!;
    if (command === 'V') y = n[0]!;
    if (command === 'h') x += n[0]!;
    if (command === 'v') y += n[0]!;
    if (command === 'a') [x, y] = [x + n[5]!, y + n[6]!];
    points.push([x, y]);
  }
  return points;
}

const kinds: PartKind[] = ['resistor', 'inductor', 'capacitor', 'jumper', 'speaker', 'amplifier'];
const symbols: [string, SymbolPath][] = [
  ...kinds.map((kind): [string, SymbolPath] => [kind, symbolOf(kind)]),
  ['cored inductor', symbolOf('inductor', false, true)],
  ['reversed speaker', symbolOf('speaker', true)],
  ['reversed amplifier', symbolOf('amplifier', true)],
];

describe('symbols', () => {
  for (const [name, { outline, solid }] of symbols) {
    it(`${name}: leads end at the pins, nothing leaves four by two units`, () => {
      const points = pointsOf(outline + solid);
      expect(points).toContainEqual([-2, 0]);
      expect(points).toContainEqual([2, 0]);
      for (const [x, y] of points) {
        expect(Math.abs(x)).toBeLessThanOrEqual(2);
        expect(Math.abs(y)).toBeLessThanOrEqual(1);
      }
    });
  }

  it('a core and a reversed terminal show', () => {
    expect(symbolOf('inductor', false, true).outline).not.toBe(symbolOf('inductor').outline);
    expect(symbolOf('speaker', true).outline).not.toBe(symbolOf('speaker').outline);
    expect(symbolOf('resistor', true)).toEqual(symbolOf('resistor'));
  });

  it('signs of a terminal and of the return begin at their wire', () => {
    expect(pointsOf(returnSymbol().outline)[0]).toEqual([0, 0]);
    expect(pointsOf(terminalSymbol().outline)[0]).toEqual([-0.2, 0]);
  });
});
