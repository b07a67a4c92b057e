import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { braceVolumeM3, clearDepthM, clearWidthM, spaceBetweenM3 } from '../../../src/core/document/insideSpace.ts';
import { plainWood } from '../../../src/core/document/schema/plainWood.ts';
import type { Brace, Chamber } from '../../../src/core/document/schema.ts';
import { newChamber } from '../../../src/core/document/start/newChamber.ts';
import { twoWay } from './twoWay.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyCabinet = fc
  .record({
    widthM: between(0.15, 0.6),
    heightM: between(0.2, 1.3),
    depthM: between(0.2, 0.6),
    panelM: between(0.009, 0.025),
    frontM: fc.option(between(0.012, 0.04)),
    rightM: fc.option(between(0.012, 0.03)),
    frontLeanDeg: between(0, 8),
    narrowing: between(0.6, 1),
  })
  .map(({ frontM, rightM, frontLeanDeg, narrowing, ...size }) => ({
    ...size,
    wood: { ...plainWood, frontM, rightM, frontLeanDeg, backWidthM: narrowing * size.widthM },
  }));

describe('air inside a cabinet', () => {
  it('of a plain box is its inner width, depth and height', () => {
    const box = { widthM: 0.3, heightM: 1, depthM: 0.4, panelM: 0.02, wood: plainWood };
    expect(spaceBetweenM3(box, 0.02, 0.98, null)).toBeCloseTo(0.26 * 0.36 * 0.96, 12);
    expect(spaceBetweenM3(box, 0.02, 0.98, 0.1)).toBeCloseTo(0.26 * 0.1 * 0.96, 12);
    expect(spaceBetweenM3({ ...box, wood: { ...plainWood, backM: 0.01 } }, 0.02, 0.98, null)).toBeCloseTo(
      0.26 * 0.37 * 0.96,
      12,
    );
    expect(spaceBetweenM3(box, 0.5, 0.4, null)).toBe(0);
  });

  it('of leaning and narrowing cabinets adds up from thin sticks of air, counted one by one (seed 71)', () => {
    fc.assert(
      fc.property(anyCabinet, between(0, 0.4), (cabinet, from) => {
        const bottomM = 0.05 + from * cabinet.heightM;
        const topM = cabinet.heightM - 0.05;
        fc.pre(topM > bottomM && clearDepthM(cabinet, topM) > 0.02);
        const [rows, columns] = [600, 6];
        let sum = 0;
        for (let i = 0; i < rows; i++) {
          const yM = bottomM + ((i + 0.5) / rows) * (topM - bottomM);
          const back = cabinet.depthM - cabinet.panelM;
          const front = back - clearDepthM(cabinet, yM);
          for (let k = 0; k < columns; k++) {
            const behind = front + ((k + 0.5) / columns) * (back - front);
            sum += clearWidthM(cabinet, behind) * ((topM - bottomM) / rows) * ((back - front) / columns);
          }
        }
        expect(spaceBetweenM3(cabinet, bottomM, topM, null) / sum).toBeCloseTo(1, 6);
      }),
      { seed: 71, numRuns: 40 },
    );
  });

  it('braces take their thickness times what they span, less the openings', () => {
    const { enclosure } = twoWay;
    const chamber: Chamber = {
      ...newChamber(twoWay),
      volume: { kind: 'geometry', bottomM: 0.018, topM: 0.382, depthM: null },
    };
    const brace: Brace = { id: 'b', chamberId: chamber.id, lies: 'level', atM: 0.2, thicknessM: 0.012, openShare: 0.5 };
    expect(braceVolumeM3(brace, chamber, enclosure)).toBeCloseTo(0.006 * 0.184 * 0.264, 12);
    expect(braceVolumeM3({ ...brace, lies: 'across' }, chamber, enclosure)).toBeCloseTo(0.006 * 0.184 * 0.364, 12);
    expect(braceVolumeM3({ ...brace, lies: 'lengthwise' }, chamber, enclosure)).toBeCloseTo(0.006 * 0.264 * 0.364, 12);
  });
});
