import { describe, expect, it } from 'vitest';
import { formatFigure } from '../../../src/core/messages/formatFigure.ts';

describe('formatFigure', () => {
  it.each([
    [1, '1.0'],
    [2.2, '2.2'],
    [118, '118'],
    [118.04, '118'],
    [118.06, '118.1'],
    [0.15, '0.15'],
    [8.254, '8.254'],
    [0, '0'],
    [-3, '−3.0'],
    [10, '10'],
    [-0.02, '−0.02'],
    [101325, '101300'],
    [1e-5, '1e-5'],
    [2.5e12, '2.5e12'],
    [Number.NaN, 'not a number'],
    [Number.POSITIVE_INFINITY, 'infinite'],
  ])('%d is %s', (value, text) => {
    expect(formatFigure(value)).toBe(text);
  });
});
