import { expect, test } from 'vitest';
import { frequencyScale } from '../../src/plot/index.ts';

test('a decade has the same width everywhere, and pixels lead back to hertz', () => {
  const scale = frequencyScale([20, 20000], [40, 940]);
  expect(scale.toPx(20)).toBeCloseTo(40, 9);
  expect(scale.toPx(20000)).toBeCloseTo(940, 9);
  // Three decades on 900 pixels: 300 each.
  expect(scale.toPx(2000) - scale.toPx(200)).toBeCloseTo(300, 9);
  expect(scale.toHz(scale.toPx(3150))).toBeCloseTo(3150, 9);
});

test('an axis that is none is refused', () => {
  expect(() => frequencyScale([0, 100], [0, 10])).toThrow(RangeError);
  expect(() => frequencyScale([100, 100], [0, 10])).toThrow(RangeError);
});
