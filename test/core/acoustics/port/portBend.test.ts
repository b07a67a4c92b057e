import { describe, expect, it } from 'vitest';
import { bendCorrectionM, portEffectiveLengthM, smoothBendCorrectionM } from '../../../../src/core/acoustics/index.ts';

/** Squares that a right-angled corner of a strip of width 1 counts, with legs of two widths, by relaxation on a grid. */
const cornerSquares = (cells: number): number => {
  const leg = 2;
  const size = (leg + 1) * cells;
  // An L: a square of cells at the origin, legs along x and y. The mirror at 45 degrees is the surface of potential 0.
  const inside = (i: number, k: number): boolean =>
    (i < cells || k < cells) && i >= 0 && k >= 0 && i < size && k < size;
  const potential = new Float64Array(size * size);
  const neighbours = [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const;
  // Ends: +1 beyond the leg along x, −1 beyond the leg along y, half a cell away: conductance 2.
  const end = (i: number, k: number): number =>
    k < cells && i === size - 1 ? 1 : i < cells && k === size - 1 ? -1 : 0;
  const over = 2 / (1 + Math.PI / (2 * size));
  for (let sweep = 0; sweep < 60 * cells; sweep++) {
    for (let i = 0; i < size; i++)
      for (let k = 0; k < size; k++) {
        if (!inside(i, k)) continue;
        let flow = 0;
        let conductance = 0;
        for (const [di, dk] of neighbours) {
          if (!inside(i + di, k + dk)) continue;
          flow += potential[(i + di) * size + k + dk]!;
          conductance += 1;
        }
        const held = end(i, k);
        if (held !== 0) {
          flow += 2 * held;
          conductance += 2;
        }
        const here = i * size + k;
        potential[here] = potential[here]! + over * (flow / conductance - potential[here]!);
      }
  }
  let current = 0;
  for (let k = 0; k < cells; k++) current += 2 * (1 - potential[(size - 1) * size + k]!);
  return 2 / current - 2 * leg;
};

describe('bendCorrectionM', () => {
  it('is what a sharp corner lacks on a grid: 0.5587 squares in place of 1', () => {
    const [coarse, fine] = [cornerSquares(10), cornerSquares(20)];
    // The inner corner's singularity makes the error fall with h^(4/3).
    const extrapolated = fine + (fine - coarse) / (2 ** (4 / 3) - 1);
    const height = 0.04;
    const correction = bendCorrectionM({ kind: 'slot', widthM: 0.2, heightM: height });
    expect(Math.abs(1 + correction / height - extrapolated)).toBeLessThan(5e-4);
    expect(Math.abs(1 + correction / height - 0.5587)).toBeLessThan(5e-5);
  });

  it('of a smooth bend is the conductance ∫dS/r over the bore', () => {
    const [radius, centre, angle] = [0.035, 0.06, 1.2];
    let sum = 0;
    const rings = 400;
    for (let i = 0; i < rings; i++)
      for (let k = 0; k < 64; k++) {
        const r = (radius * (i + 0.5)) / rings;
        sum += (r * (radius / rings) * (2 * Math.PI)) / 64 / (centre + r * Math.cos((2 * Math.PI * k) / 64));
      }
    const length = (angle * Math.PI * radius ** 2) / sum;
    expect(Math.abs(smoothBendCorrectionM(radius, centre, angle) - (length - angle * centre))).toBeLessThan(2e-7);
  });

  it('shortens every bent port, vanishes for a wide bend and refuses one tighter than its bore', () => {
    const port = {
      shape: { kind: 'round', diameterM: 0.07 },
      lengthM: 0.4,
      innerEnd: 'free',
      outerEnd: 'flanged',
    } as const;
    expect(portEffectiveLengthM({ ...port, bends: 2 }) - portEffectiveLengthM(port)).toBeCloseTo(
      2 * bendCorrectionM(port.shape),
      12,
    );
    expect(bendCorrectionM(port.shape)).toBeCloseTo(-0.00737, 5);
    expect(Math.abs(smoothBendCorrectionM(0.035, 100, Math.PI / 2))).toBeLessThan(1e-5);
    expect(() => smoothBendCorrectionM(0.035, 0.03, 1)).toThrow(RangeError);
  });
});
