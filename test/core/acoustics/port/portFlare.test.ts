import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  endCorrectionM,
  flareBoreLengthM,
  flaredMouth,
  portEffectiveLengthM,
  portEndCorrectionsM,
  portLengthForTuning,
  portSectionM2,
  tuningForPortLength,
} from '../../../../src/core/acoustics/index.ts';

const unit = { kind: 'round', diameterM: 2 } as const;

describe('flareBoreLengthM', () => {
  it('gives the field solution of a flanged rounded end, in radii of the bore, within 0.012', () => {
    // Potential flow out of a tube into a half space, finite volumes on cells of 0.05 and 0.025 radii, extrapolated; the sharp end
    // comes out as 0.8205 by the same means.
    for (const [flare, beyondStraight] of [
      [0.1, 0.8061],
      [0.2, 0.7739],
      [0.43, 0.6849],
      [0.7, 0.5523],
      [1, 0.3797],
      [1.5, 0.0916],
    ] as const) {
      const port = { shape: unit, innerEnd: 'flanged', outerEnd: 'flanged', outerFlareM: flare } as const;
      const oneEnd = portEndCorrectionsM(port) - endCorrectionM(unit, 'flanged');
      expect(Math.abs(oneEnd - beyondStraight)).toBeLessThan(0.012);
    }
  });

  it('is the sum over thin slices in the depth itself, plus the fitted rest', () => {
    for (const [shape, end] of [
      [{ kind: 'round', diameterM: 0.07 }, 'flanged'],
      [{ kind: 'slot', widthM: 0.2, heightM: 0.03 }, 'on-wall'],
    ] as const) {
      const flareM = 0.015;
      const slices = 40_000;
      let sum = 0;
      for (let i = 0; i < slices; i++) {
        const depth = (flareM * (i + 0.5)) / slices;
        const grown = flareM - Math.sqrt(flareM ** 2 - (flareM - depth) ** 2);
        const section =
          shape.kind === 'round'
            ? (Math.PI / 4) * (shape.diameterM + 2 * grown) ** 2
            : (shape.widthM + 2 * grown) * (shape.heightM + grown);
        sum += ((flareM / slices) * portSectionM2(shape)) / section;
      }
      const radiusM = Math.sqrt(portSectionM2(shape) / Math.PI);
      const rest = (((0.974 * endCorrectionM(shape, end)) / radiusM) * flareM) / (1 + (2.4 * flareM) / radiusM);
      // The midpoint rule meets a vertical wall at the mouth: its error falls with the root of the step.
      expect(Math.abs(flareBoreLengthM(shape, end, flareM) - rest - sum)).toBeLessThan(2e-6);
    }
  });

  it('lightens the port for any flare, the more the wider, and vanishes with it (seed 61)', () => {
    const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(
        number(0.03, 0.15),
        number(0.001, 0.03),
        fc.constantFrom('free', 'flanged'),
        (diameterM, flareM, outerEnd) => {
          const shape = { kind: 'round', diameterM } as const;
          const at = (outerFlareM: number) =>
            portEffectiveLengthM({ shape, lengthM: 0.2, innerEnd: 'free', outerEnd, outerFlareM });
          expect(at(flareM)).toBeLessThan(at(flareM / 2));
          expect(at(0)).toBe(portEffectiveLengthM({ shape, lengthM: 0.2, innerEnd: 'free', outerEnd }));
          expect(Math.abs(at(1e-9) - at(0))).toBeLessThan(1e-8);
        },
      ),
      { seed: 61 },
    );
  });

  it('opens a tube all round, a slot not along its walls', () => {
    expect(flaredMouth(unit, 'free', 0.5)).toEqual({ kind: 'round', diameterM: 3 });
    const slot = { kind: 'slot', widthM: 2, heightM: 1 } as const;
    expect(flaredMouth(slot, 'flanged', 0.5)).toEqual({ kind: 'slot', widthM: 3, heightM: 2 });
    expect(flaredMouth(slot, 'on-wall', 0.5)).toEqual({ kind: 'slot', widthM: 3, heightM: 1.5 });
    expect(flaredMouth(slot, 'in-corner', 0.5)).toEqual({ kind: 'slot', widthM: 2.5, heightM: 1.5 });
  });

  it('are the shortest that a port can be: a tuning that leaves less is refused, with that of the flares alone', () => {
    const port = {
      shape: { kind: 'round', diameterM: 0.07 },
      innerEnd: 'flanged',
      outerEnd: 'flanged',
      innerFlareM: 0.02,
      outerFlareM: 0.03,
      count: 1,
    } as const;
    const highestHz = tuningForPortLength({ ...port, lengthM: 0.05 }, 0.02, 343.2);
    const below = portLengthForTuning(port, highestHz * 0.999, 0.02, 343.2);
    expect(below.ok && below.value > 0.05).toBe(true);
    const above = portLengthForTuning(port, highestHz * 1.001, 0.02, 343.2);
    expect(above.ok).toBe(false);
    if (!above.ok) expect(above.problems[0]!.values.highestHz).toBeCloseTo(highestHz, 9);
  });
});
