import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createExpressionReader } from '../../../src/core/units/expression.ts';
import { formatInchFraction } from '../../../src/core/units/formatInchFraction.ts';

describe('formatInchFraction', () => {
  it.each<[number, 16 | 32, string]>([
    [0.1175, 16, '4 5/8'],
    [0.01905, 16, '3/4'],
    [0.0254, 16, '1'],
    [0, 16, '0'],
    [0.0254 / 32, 32, '1/32'],
    [0.0254 / 32, 16, '1/16'],
    [-0.0381, 16, '−1 1/2'],
    [-0.0001, 16, '0'],
    [0.0253, 16, '1'],
  ])('%d m to 1/%d is %s in', (lengthM, denominator, number) => {
    expect(formatInchFraction(lengthM, denominator)).toEqual({ number, unit: 'in' });
  });

  it('is read back within half a part (seed 48)', () => {
    const read = createExpressionReader();
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.constantFrom<16 | 32>(16, 32),
        (lengthM, denominator) => {
          const { number } = formatInchFraction(lengthM, denominator);
          const back = read(`${number} in`, 'length', 'mm');
          return back.ok && Math.abs(back.value - lengthM) <= (0.5 * 0.0254) / denominator + 1e-9;
        },
      ),
      { seed: 48 },
    );
  });
});
