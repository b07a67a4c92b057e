import { describe, expect, it } from 'vitest';
import { twoSourceAngle, twoSourceLobe, twoSourceSum } from '../../../src/core/acoustics/twoSourceLobe.ts';

const magnitude = ({ re, im }: { re: number; im: number }): number => Math.hypot(re, im);

describe('twoSourceLobe', () => {
  it('lies on the axis for sources in phase, and at asin(λ/4d) for a quarter turn, towards the later source', () => {
    const one = { re: 0.5, im: 0 };
    expect(twoSourceLobe({ upper: one, lower: one, spacingWavelengths: 1 })).toEqual({ angleRad: 0, magnitude: 1 });
    const later = { re: 0, im: -0.5 };
    const up = twoSourceLobe({ upper: later, lower: one, spacingWavelengths: 0.8 });
    expect(up.angleRad).toBeCloseTo(Math.asin(1 / 3.2), 12);
    const down = twoSourceLobe({ upper: one, lower: later, spacingWavelengths: 0.8 });
    expect(down.angleRad).toBeCloseTo(-up.angleRad, 12);
  });

  it('agrees with a search over the half circle, also where no direction adds in phase', () => {
    for (const [phase, spacing] of [
      [0.4, 1],
      [-1.2, 0.7],
      [2.9, 1.6],
      [1.5, 0.1],
      [-3, 0.3],
    ] as const) {
      const sources = {
        upper: { re: 0.8 * Math.cos(phase), im: 0.8 * Math.sin(phase) },
        lower: { re: 0.6, im: 0 },
        spacingWavelengths: spacing,
      };
      const searched = Array.from({ length: 18001 }, (_, i) =>
        magnitude(twoSourceSum(sources, ((i - 9000) / 9000) * (Math.PI / 2))),
      );
      const lobe = twoSourceLobe(sources);
      expect(lobe.magnitude).toBeCloseTo(Math.max(...searched), 6);
      expect(magnitude(twoSourceSum(sources, lobe.angleRad))).toBeCloseTo(lobe.magnitude, 12);
    }
  });

  it('gives the angle of a null or a share, null where the sources are too close', () => {
    expect(twoSourceAngle(1, 0)).toBeCloseTo(Math.PI / 6, 12);
    expect(twoSourceAngle(0.5, 0)).toBeCloseTo(Math.PI / 2, 7);
    expect(twoSourceAngle(0.4, 0)).toBeNull();
    const angle = twoSourceAngle(1.3, 0.5)!;
    const equal = { re: 0.5, im: 0 };
    expect(magnitude(twoSourceSum({ upper: equal, lower: equal, spacingWavelengths: 1.3 }, angle))).toBeCloseTo(
      0.5,
      12,
    );
  });
});
