import { describe, expect, it } from 'vitest';
import { expressionText } from '../../../src/core/units/expressionText.ts';
import { findUnit, unitsOf } from '../../../src/core/units/findUnit.ts';
import { tidyNumbers } from '../../../src/core/units/tidyNumbers.ts';
import { tidyText } from '../../../src/core/units/tidyText.ts';

describe('tidyText', () => {
  it.each([
    ['1½″', '1 1/2"'],
    ['6.8 µF', '6.8 uF'],
    ['8 Ω', '8 ohm'],
    ['2 × 4', '2*4'],
    ['1.2 ft³', '1.2 ft^3'],
    ['T · m', 'T*m'],
    ['−3', '-3'],
    ['3–5', '3–5'],
    ['1.2 cu. ft', '1.2 cuft'],
  ])('writes %s as %s', (text, tidy) => {
    expect(tidyText(text)).toBe(tidy);
    expect(tidyText(tidy)).toBe(tidy);
  });
});

describe('tidyNumbers', () => {
  it.each([
    ['6,8 uF', '6.8 uF'],
    ['1,234.5', '1234.5'],
    ['1.234,5', '1234.5'],
    ['1,234,567', '1234567'],
    ['10 000 Hz', '10000 Hz'],
    ['0,125 in', '0.125 in'],
    ['1 100/3', '1 100/3'],
    [',5', '.5'],
  ])('reads %s as %s', (text, tidy) => {
    expect(tidyNumbers(text)).toEqual({ how: 'read', text: tidy });
  });
  it('does not decide what can be read in two ways', () => {
    expect(tidyNumbers('1,500')).toEqual({ how: 'ambiguous', number: '1,500' });
    expect(tidyNumbers('1.2.3')).toEqual({ how: 'unreadable', number: '1.2.3' });
  });
});

describe('expressionText', () => {
  it.each([
    ['1 1/2"', '(1+1/2) inch'],
    ['2 in', '2 inch'],
    ['2 ft 3 in', '(2 ft + 3 inch)'],
    ['3 in^2', '3 inch^2'],
    ['3in2', '3inch^2'],
  ])('rewrites %s as %s', (text, rewritten) => {
    expect(expressionText(text, 'length')).toBe(rewritten);
  });
  it('rewrites markings where they can be meant', () => {
    expect(expressionText('4R7+2', 'resistance')).toBe('(4.7 ohm)+2');
    expect(expressionText('4R7+2', 'length')).toBe('4R7+2');
  });
});

describe('findUnit', () => {
  it('takes either case, but never milli for mega', () => {
    expect(findUnit('UF', 'capacitance')?.symbol).toBe('µF');
    expect(findUnit('KHZ', 'frequency')?.symbol).toBe('kHz');
    expect(findUnit('MH', 'inductance')).toBeUndefined();
    expect(findUnit('mohm', 'resistance')?.factor).toBe(1e-3);
    expect(findUnit('Mohm', 'resistance')?.factor).toBe(1e6);
  });
  it('lists the units of a kind, the inside one first', () => {
    expect(unitsOf('inductance')).toEqual(['H', 'mH', 'µH', 'nH']);
  });
});
