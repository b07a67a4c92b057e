import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutList, layOutSheets, panelsOf, sheetParts, workshopLength } from '../../../../src/core/build/index.ts';
import { anyCabinet, cabinet, ringJoints } from './someCabinet.ts';

const linesOf = (one: ReturnType<typeof cabinet>) => {
  const panels = panelsOf(one);
  if (!panels.ok) throw new Error(JSON.stringify(panels.problems));
  return cutList(panels.value);
};

describe('cutList', () => {
  it('puts equal panels in one line', () => {
    expect(
      linesOf(cabinet({})).map(({ panels, count, length, width }) => [
        panels,
        count,
        length.millimetres,
        width.millimetres,
      ]),
    ).toEqual([
      [['left', 'right'], 2, '364', '300'],
      [['front', 'back'], 2, '364', '214'],
      [['top', 'bottom'], 2, '250', '300'],
    ]);
  });

  it('says in inches what is 250 mm: 9 27/32, 0.03 mm too much', () => {
    // 250 / 25.4 × 32 = 314.96; 315/32 in = 250.03125 mm.
    expect(workshopLength(0.25)).toMatchObject({ millimetres: '250', inches: '9 27/32' });
    expect(workshopLength(0.25).inchErrorM).toBeCloseTo(0.00003125, 12);
  });

  it('is never more than half a thirty-second of an inch off (seed 55)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 2.5, noNaN: true }), (lengthM) => {
        expect(Math.abs(workshopLength(lengthM).inchErrorM)).toBeLessThanOrEqual(0.0254 / 64 + 1e-12);
      }),
      { seed: 55, numRuns: 200 },
    );
  });

  it('notes mitres and steps, and that left and right are one line though mirrored', () => {
    const joints = ringJoints((wall, ring) =>
      wall === 'front' ? { kind: 'butt', through: 'front' } : { kind: 'rebate', cutInto: ring, depthM: 0.009 },
    );
    const lines = linesOf(cabinet({ backWidthM: 0.25 }, { joints }));
    expect(lines.find(({ panels }) => panels.includes('left'))).toMatchObject({
      panels: ['left', 'right'],
      notes: [
        { kind: 'mitre', runs: 'across', count: 2, angleDeg: 45 },
        { kind: 'rebate', runs: 'up', count: 1, depthM: 0.009, widthM: 0.018, stopped: false },
      ],
    });
    const leaning = linesOf(cabinet({ slopeRad: 0.1 }));
    expect(leaning.find(({ panels }) => panels.includes('left'))).toMatchObject({
      panels: ['left', 'right'],
      shape: 'trapezoid',
    });
  });

  it('names every panel once, and its parts find a place on a board (seed 56)', () => {
    fc.assert(
      fc.property(anyCabinet, (one) => {
        const lines = linesOf(one);
        expect(lines.flatMap(({ panels }) => panels).sort()).toEqual([
          'back',
          'bottom',
          'front',
          'left',
          'right',
          'top',
        ]);
        const parts = sheetParts(lines, one.thicknessM.front, 2, true);
        expect(parts.length).toBeGreaterThan(0);
        const layout = layOutSheets(parts, [{ lengthM: 2.5, widthM: 1.25, count: 'unlimited' }], {
          kerfM: 0.003,
          trimM: 0.01,
          seed: 1,
          effort: 20,
        });
        expect(layout.ok).toBe(true);
      }),
      { seed: 56, numRuns: 40 },
    );
  });
});
