import { describe, expect, it } from 'vitest';
import { freshPartId } from '../../../../src/core/document/graph/freshPartId.ts';

describe('freshPartId', () => {
  const named = (...ids: string[]) => ids.map((id) => ({ id }));

  it('goes on above the greatest number, so that a given-up name does not come back', () => {
    expect(freshPartId(named('R1', 'R2', 'R6'), 'resistor')).toBe('R7');
    expect(freshPartId(named('r12', 'Rpad', 'C40'), 'resistor')).toBe('R13');
    expect(freshPartId([], 'amplifier')).toBe('V1');
  });

  it('does not take speakers for inductors', () => {
    expect(freshPartId(named('L3', 'LS8'), 'inductor')).toBe('L4');
    expect(freshPartId(named('L3', 'LS8'), 'speaker')).toBe('LS9');
  });
});
