import { describe, expect, it } from 'vitest';
import type { FilterShape } from '../../../../src/core/circuit/index.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import { bandWeights, type TargetShape, targetFor, targetLevelsDb } from '../../../../src/core/design/targets/index.ts';

const flat: TargetShape = { levelDb: 86, tiltDbPerOctave: 0, pivotHz: 1000, highPass: null, lowPass: null };
const at = (shape: Partial<TargetShape>, ...hz: number[]) => [
  ...targetLevelsDb({ ...flat, ...shape }, Float64Array.from(hz)),
];

describe('targetLevelsDb', () => {
  it('is flat at its level, or tilted about the pivot', () => {
    expect(at({}, 20, 1000, 20000)).toEqual([86, 86, 86]);
    expect(at({ tiltDbPerOctave: -0.5 }, 500, 1000, 4000)).toEqual([86.5, 86, 85]);
    expect(at({ levelDb: null }, 1000)).toEqual([0]);
  });

  // The corners: half power for Butterworth, half pressure for Linkwitz-Riley (S. H. Linkwitz, JAES 24, 1976).
  it.each([
    [{ family: 'butterworth', order: 3 }, -3.0103],
    [{ family: 'linkwitz-riley', order: 4 }, -6.0206],
  ] as const)('has the corner and the slope of its family: %o', (shape: FilterShape, cornerDb) => {
    const lowPass = { shape, cornerHz: 2000 };
    const [corner, octaveAbove, twoAbove] = at({ levelDb: 0, lowPass }, 2000, 32000, 64000);
    expect(corner).toBeCloseTo(cornerDb, 4);
    expect(octaveAbove! - twoAbove!).toBeCloseTo(shape.order * 6.0206, 2);
    const [mirrored] = at({ levelDb: 0, highPass: lowPass }, 2000 / 16);
    expect(mirrored).toBeCloseTo(octaveAbove!, 9);
  });

  it('a Bessel of the second order has the magnitude of 3 / (s² + 3 s + 3)', () => {
    const lowPass = { shape: { family: 'bessel', order: 2, normalisation: 'delay' }, cornerHz: 1000 } as const;
    const [two] = at({ levelDb: 0, lowPass }, 2000);
    // s = 2j: 3 / (3 - 4 + 6j)
    expect(two).toBeCloseTo(20 * Math.log10(3 / Math.hypot(1, 6)), 9);
  });
});

describe('bandWeights and targetFor', () => {
  const frequenciesHz = sweepGrid(100, 10000, 3);

  it('weighs by band, the greatest where bands overlap, nothing outside', () => {
    const bands = [
      { fromHz: 900, toHz: 20000, weight: 1 },
      { fromHz: 900, toHz: 1100, weight: 4 },
    ];
    expect([...bandWeights(bands, frequenciesHz)]).toEqual([0, 4, 1]);
    const target = targetFor({ kind: 'sum', points: [0] }, { ...flat, levelDb: null }, bands, frequenciesHz);
    expect(target).toMatchObject({ levelIsFree: true });
    expect([...target.levelsDb]).toEqual([0, 0, 0]);
  });
});
