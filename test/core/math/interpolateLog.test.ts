import { describe, expect, it } from 'vitest';
import { interpolateLogInto } from '../../../src/core/math/index.ts';

describe('interpolateLogInto', () => {
  it('is straight over ln f, passes through its points and holds its ends', () => {
    const out = new Float64Array(6);
    interpolateLogInto(out, [10, 100, 1000, 3162.2776601683795, 10000, 20000], [100, 1000, 10000], [2, 4, -4]);
    [2, 2, 4, 0, -4, -4].forEach((value, i) => {
      expect(out[i]).toBeCloseTo(value, 12);
    });
  });

  it('passes several given points between two wanted ones', () => {
    const out = new Float64Array(2);
    interpolateLogInto(out, [11, 79], [10, 20, 40, 80], [0, 1, 2, 3]);
    expect(out[0]).toBeCloseTo(Math.log2(1.1), 12);
    expect(out[1]).toBeCloseTo(Math.log2(7.9), 12);
  });
});
