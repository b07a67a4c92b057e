import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stripsAcross } from '../../../../src/core/build/index.ts';

describe('stripsAcross', () => {
  it('counts as a person at the saw does: strip, kerf, strip, while the board lasts (seed 44)', () => {
    const um = (from: number, to: number) => fc.integer({ min: from, max: to });
    fc.assert(
      fc.property(um(10, 1300), um(10, 500), um(0, 6), um(0, 20), (sheet, strip, kerf, trim) => {
        let count = 0;
        for (let left = sheet - 2 * trim; left >= strip; left -= strip + kerf) count += 1;
        expect(stripsAcross(sheet / 1000, strip / 1000, kerf / 1000, trim / 1000)).toBe(count);
      }),
      { seed: 44, numRuns: 500 },
    );
  });
  it('throws on a strip without width', () => {
    expect(() => stripsAcross(1, 0, 0.003, 0)).toThrow(RangeError);
  });
});
