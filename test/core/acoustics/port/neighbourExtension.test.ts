import { describe, expect, it } from 'vitest';
import {
  besideWallExtensionM,
  endCorrectionM,
  groupExtensionM,
  meanInverseDistancePerM,
  mutualMassKgPerM4,
  neighbourExtensionM,
  rectangularEndCorrectionM,
  splitPort,
  tuningForPortLength,
  tuningOfShorterPort,
} from '../../../../src/core/acoustics/index.ts';
import { AIR } from '../sweep.ts';

const c = AIR.soundSpeedMPerS;
const tube = { kind: 'round', diameterM: 0.05 } as const;

describe('groupExtensionM', () => {
  it('is the mean over the ports: three in a row have two near pairs and one far one', () => {
    const centres = [0, 0.08, 0.16].map((xM) => ({ xM, yM: 0 }));
    const area = Math.PI * 0.025 ** 2;
    const pairs = 4 * meanInverseDistancePerM(0.025, 0.08) + 2 * meanInverseDistancePerM(0.025, 0.16);
    expect(groupExtensionM(tube, centres)).toBeCloseTo((area / (2 * Math.PI)) * (pairs / 3), 12);
    expect(groupExtensionM(tube, centres.slice(0, 1))).toBe(0);
  });

  it('is the mutual mass as a length: 1.791 kg/m⁴ and 5.7 mm for two 70 mm ports 110 mm apart (physics notes, 4.3)', () => {
    const mass = mutualMassKgPerM4(0.035, 0.11, AIR.densityKgPerM3);
    expect(Math.abs(mass - 1.7912)).toBeLessThan(5e-4);
    const pair = [
      { xM: 0, yM: 0.2 },
      { xM: 0.11, yM: 0.2 },
    ];
    expect(groupExtensionM({ kind: 'round', diameterM: 0.07 }, pair)).toBeCloseTo(
      (mass * Math.PI * 0.035 ** 2) / AIR.densityKgPerM3,
      12,
    );
  });
});

describe('walls beside a mouth', () => {
  it('count as the image of the port, and where the rim touches they are the end on a wall', () => {
    expect(besideWallExtensionM(tube, 0.1)).toBe(neighbourExtensionM(tube, [0.2]));
    expect(endCorrectionM(tube, 'flanged') + besideWallExtensionM(tube, 0.025)).toBeCloseTo(
      endCorrectionM(tube, 'on-wall'),
      12,
    );
  });

  it('in a corner mirror both ways: a slot of 2h × 2w, and a tube with three images', () => {
    expect(endCorrectionM({ kind: 'slot', widthM: 0.1, heightM: 0.03 }, 'in-corner')).toBe(
      rectangularEndCorrectionM(0.2, 0.06),
    );
    const images = neighbourExtensionM(tube, [0.05, 0.05, Math.hypot(0.05, 0.05)]);
    expect(endCorrectionM(tube, 'in-corner')).toBeCloseTo(endCorrectionM(tube, 'flanged') + images, 12);
    for (const shape of [tube, { kind: 'slot', widthM: 0.1, heightM: 0.03 } as const])
      expect(endCorrectionM(shape, 'in-corner')).toBeGreaterThan(endCorrectionM(shape, 'on-wall'));
  });
});

describe('splitPort', () => {
  it('keeps section and tuning: two tubes of 49.5 mm, 15 mm longer, for one of 70 mm', () => {
    const port = {
      shape: { kind: 'round', diameterM: 0.07 },
      lengthM: 0.2,
      innerEnd: 'free',
      outerEnd: 'flanged',
    } as const;
    const pair = splitPort(port, 2);
    const before = tuningForPortLength({ ...port, count: 1 }, 0.03, c);
    expect(tuningForPortLength(pair, 0.03, c)).toBeCloseTo(before, 10);
    // (0.82167 + 0.612701) (35 − 24.75) mm
    expect(pair.lengthM - 0.2).toBeCloseTo(1.434371 * 0.035 * (1 - Math.SQRT1_2), 9);
    const slot = splitPort({ ...port, shape: { kind: 'slot', widthM: 0.2, heightM: 0.03 } }, 4);
    expect(slot.shape).toEqual({ kind: 'slot', widthM: 0.05, heightM: 0.03 });
    expect(() => splitPort(port, 1.5)).toThrow(RangeError);
  });
});

describe('tuningOfShorterPort', () => {
  it('rises by √(Leff/(Leff − 5 mm)): 39.11 to 39.51 Hz for a 70 mm tube in 30 L', () => {
    const port = {
      shape: { kind: 'round', diameterM: 0.07 },
      lengthM: 0.2,
      innerEnd: 'free',
      outerEnd: 'flanged',
      count: 1,
    } as const;
    const effective = 0.2 + 1.434371 * 0.035;
    const before = tuningForPortLength(port, 0.03, c);
    const after = tuningOfShorterPort(port, 0.005, 0.03, c);
    expect(after / before).toBeCloseTo(Math.sqrt(effective / (effective - 0.005)), 9);
    expect(after).toBeCloseTo(39.508, 3);
    expect(() => tuningOfShorterPort({ ...port, outerFlareM: 0.02 }, 0.19, 0.03, c)).toThrow(RangeError);
  });
});
