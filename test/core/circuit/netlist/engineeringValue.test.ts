import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { engineeringText, readEngineering } from '../../../../src/core/circuit/index.ts';

describe('readEngineering', () => {
  it.each([
    ['4.7u', 4.7e-6],
    ['4.7U', 4.7e-6],
    ['4.7µ', 4.7e-6],
    ['4.7uF', 4.7e-6],
    ['10M', 10e-3],
    ['10m', 10e-3],
    ['10MEG', 10e6],
    ['10Meg', 10e6],
    ['2k', 2000],
    ['3g', 3e9],
    ['1t', 1e12],
    ['22n', 22e-9],
    ['22p', 22e-12],
    ['1F', 1e-15],
    ['.5', 0.5],
    ['5.', 5],
    ['1e-3', 1e-3],
    ['1.5E3u', 1.5e-3],
    ['+3', 3],
    ['-3', -3],
    ['6,8u', 6.8e-6],
    ['0,125m', 0.125e-3],
    [',47u', 0.47e-6],
    ['10,0', 10],
    ['1,2345k', 1234.5],
  ])('reads %s as %d farad', (text, value) => {
    expect(readEngineering(text, 'farad')).toBe(value);
  });

  it.each([
    ['8.2Ω', 'ohm', 8.2],
    ['8.2Ohm', 'ohm', 8.2],
    ['1kΩ', 'ohm', 1000],
    ['0.5mH', 'henry', 0.5e-3],
    ['2H', 'henry', 2],
    ['10W', 'watt', 10],
  ] as const)('takes the unit of %s', (text, unit, value) => {
    expect(readEngineering(text, unit)).toBe(value);
  });

  it.each([
    '',
    'abc',
    '10uX',
    '4k7',
    '1.2.3',
    '10uH',
    '1e',
    '--3',
    '1,000',
    '22,000u',
    '1,2,3',
    '1.000,5',
    '1,000.5',
    ',',
    'NaN',
    'Infinity',
    '0x10',
    '1e999',
    '10mil',
  ])('refuses %s', (text) => {
    expect(readEngineering(text, 'farad')).toBeNull();
  });
});

describe('engineeringText', () => {
  it.each([
    [4.7e-6, '4.7u'],
    [0.47e-3, '470u'],
    [2.2e-3, '2.2m'],
    [8.2, '8.2'],
    [100, '100'],
    [12e3, '12k'],
    [1e6, '1meg'],
    [0, '0'],
    [-3.3e-9, '-3.3n'],
    [1e-18, '1e-18'],
    [1.5e20, '1.5e20'],
  ])('writes %d as %s', (value, text) => {
    expect(engineeringText(value)).toBe(text);
  });

  it('is read back to the last bit (seed 1)', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(readEngineering(engineeringText(value), 'none')).toBe(value === 0 ? 0 : value);
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
});
