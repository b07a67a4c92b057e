import { describe, expect, it } from 'vitest';
import { phasorsInto } from '../../../src/core/math/index.ts';

describe('phasorsInto', () => {
  it('stays within 1e-9 of Math.cos and Math.sin up to a million radians', () => {
    const count = 20001;
    const values = Float64Array.from({ length: count }, (_, i) => i - 10000);
    const [re, im] = [new Float64Array(count), new Float64Array(count)];
    for (const scale of [0, 1e-4, 0.01, 0.37, 1, -1, Math.PI / 4, 99.9]) {
      phasorsInto(re, im, values, scale);
      let worst = 0;
      for (let i = 0; i < count; i++) {
        worst = Math.max(
          worst,
          Math.abs(re[i]! - Math.cos(values[i]! * scale)),
          Math.abs(im[i]! - Math.sin(values[i]! * scale)),
        );
      }
      expect(worst, `scale ${scale}`).toBeLessThan(1e-9);
    }
  });

  it('hits the quarter turns', () => {
    const [re, im] = [new Float64Array(5), new Float64Array(5)];
    phasorsInto(re, im, Float64Array.of(0, 1, 2, 3, 4), Math.PI / 2);
    [1, 0, -1, 0, 1].forEach((c, i) => {
      expect(re[i]).toBeCloseTo(c, 12);
    });
    [0, 1, 0, -1, 0].forEach((s, i) => {
      expect(im[i]).toBeCloseTo(s, 12);
    });
  });
});
