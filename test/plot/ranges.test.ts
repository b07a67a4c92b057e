import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromZeroRange, levelRange, steadyRange } from '../../src/plot/index.ts';

test('a level axis is 50 dB high on multiples of 5 dB with 5 to 10 dB above the curve (seed 41)', () => {
  expect(levelRange(88.2)).toEqual([45, 95]);
  expect(levelRange(null)).toEqual([50, 100]);
  fc.assert(
    fc.property(fc.double({ min: -200, max: 200, noNaN: true }), (greatest) => {
      const [low, high] = levelRange(greatest);
      expect(high - low).toBe(50);
      expect(Math.abs(high % 5)).toBe(0);
      expect(high - greatest).toBeGreaterThanOrEqual(5);
      expect(high - greatest).toBeLessThanOrEqual(10);
    }),
    { seed: 41 },
  );
});

test('an axis from zero ends on a round number above the curve (seed 42)', () => {
  expect(fromZeroRange(37)).toEqual([0, 40]);
  expect(fromZeroRange(0.0052)).toEqual([0, 0.006]);
  expect(fromZeroRange(null)).toEqual([0, 1]);
  fc.assert(
    fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), (greatest) => {
      const top = fromZeroRange(greatest)[1];
      expect(top).toBeGreaterThan(greatest);
      expect(top).toBeLessThan(2.2 * greatest);
    }),
    { seed: 42 },
  );
});

test('an axis keeps still for small changes and while it is held', () => {
  expect(steadyRange(null, [45, 95], 0.1, true)).toEqual([45, 95]);
  expect(steadyRange([45, 95], [50, 100], 0.1, false)).toEqual([45, 95]);
  expect(steadyRange([45, 95], [55, 105], 0.1, false)).toEqual([55, 105]);
  expect(steadyRange([45, 95], [55, 105], 0.1, true)).toEqual([45, 95]);
});
