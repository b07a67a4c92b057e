import { describe, expect, it } from 'vitest';
import { isFed } from '../../../../src/core/document/graph/isFed.ts';
import { amplifier, resistor, speaker } from '../twoWay.ts';

describe('isFed', () => {
  const source = amplifier('V1', ['in', '0']);

  it('needs a closed path through an amplifier', () => {
    expect(isFed([source, speaker('LS1', ['in', '0'], 'd')], 'LS1')).toBe(true);
    expect(isFed([source, resistor('R1', ['in', 'a']), speaker('LS1', ['a', '0'], 'd')], 'LS1')).toBe(true);
    expect(isFed([source, speaker('LS1', ['in', 'a'], 'd')], 'LS1')).toBe(false);
    expect(isFed([source, speaker('LS1', ['a', '0'], 'd')], 'LS1')).toBe(false);
  });

  it('is not fooled by a loop that hangs on one node', () => {
    const loop = [resistor('R1', ['in', 'a']), speaker('LS1', ['a', 'in'], 'd')];
    expect(isFed([source, ...loop], 'LS1')).toBe(false);
  });

  it('is false for a speaker that is shorted on itself', () => {
    expect(isFed([source, speaker('LS1', ['in', 'in'], 'd')], 'LS1')).toBe(false);
  });

  it('is false for what is not there', () => {
    expect(isFed([source], 'LS1')).toBe(false);
  });
});
