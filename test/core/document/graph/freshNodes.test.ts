import { describe, expect, it } from 'vitest';
import { freshNodes } from '../../../../src/core/document/graph/freshNodes.ts';
import { resistor } from '../twoWay.ts';

describe('freshNodes', () => {
  it('gives the first names that are free, whatever their capitals', () => {
    const parts = [resistor('R1', ['n1', '0']), resistor('R2', ['N3', 'a'])];
    expect(freshNodes(parts, 3)).toEqual(['n2', 'n4', 'n5']);
    expect(freshNodes(parts, 0)).toEqual([]);
  });
});
