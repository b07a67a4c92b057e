import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smoothingBiasDb, smoothPower } from '../../../src/core/measured/smoothPower.ts';

const grid = (perOctave: number): number[] =>
  Array.from({ length: 10 * perOctave + 1 }, (_, i) => 20 * 2 ** (i / perOctave));

describe('smoothPower', () => {
  it.each([
    [3, 0.15348],
    [6, 0.03857],
    [12, 0.00966],
  ])('raises a slope of 12 dB to the octave over 1/%d octave by %d dB', (fraction, bias) => {
    const f = grid(24);
    const levels = f.map((x) => 40 * Math.log10(x));
    const smoothed = smoothPower(f, levels, fraction);
    for (const i of [30, 77, 180]) expect(smoothed[i]! - levels[i]!).toBeCloseTo(bias, 4);
    expect(smoothingBiasDb(40 * Math.log10(2), fraction)).toBeCloseTo(bias, 4);
    expect(smoothed[0]).toBe(levels[0]);
  });

  it('agrees with a sum over a fine grid of the same polygon', () => {
    const f = grid(12);
    const levels = f.map((_, i) => 85 + 8 * Math.sin(i) - 5 * Math.cos(3.3 * i));
    const smoothed = smoothPower(f, levels, 3);
    const levelAt = (hz: number) => {
      const place = 12 * Math.log2(hz / 20);
      const i = Math.min(Math.floor(place), f.length - 2);
      return levels[i]! + (place - i) * (levels[i + 1]! - levels[i]!);
    };
    for (const i of [20, 51, 100]) {
      const n = 20000;
      let sum = 0;
      for (let k = 0; k < n; k++) sum += 10 ** (levelAt(f[i]! * 2 ** (((k + 0.5) / n - 0.5) / 3)) / 10) / n;
      expect(smoothed[i]).toBeCloseTo(10 * Math.log10(sum), 6);
    }
  });

  it('leaves a level curve alone and stays between least and greatest (seed 54)', () => {
    const f = grid(6);
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -300, max: 300, noNaN: true }), { minLength: f.length, maxLength: f.length }),
        fc.constantFrom(1, 3, 6, 24),
        (levels, fraction) => {
          const smoothed = smoothPower(f, levels, fraction);
          const [least, greatest] = [Math.min(...levels), Math.max(...levels)];
          return smoothed.every((x) => x >= least - 1e-9 && x <= greatest + 1e-9);
        },
      ),
      { seed: 54 },
    );
    expect(
      smoothPower(
        f,
        f.map(() => 88),
        3,
      ).every((x) => Math.abs(x - 88) < 1e-12),
    ).toBe(true);
  });

  it('throws on lists of different length', () => {
    expect(() => smoothPower([1, 2], [1], 3)).toThrow(RangeError);
    expect(() => smoothPower([1, 2], [1, 2], 0)).toThrow(RangeError);
  });
});
