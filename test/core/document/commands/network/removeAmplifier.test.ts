import { describe, expect, it } from 'vitest';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('remove-amplifier', () => {
  it('takes a channel and its settings away again', () => {
    const split = edited(twoWay, { type: 'remove-part', partId: 'J1', how: 'leave-open' });
    const both = edited(split, { type: 'add-across', nodes: ['hi', '0'], part: { kind: 'amplifier', note: '' } });
    expect(edited(both, { type: 'remove-amplifier', id: 'V2' })).toEqual(split);
    expect(wiring(edited(both, { type: 'remove-amplifier', id: 'V1' }))).not.toContain('V1 in 0');
  });

  it('refuses the last one and what is none', () => {
    expect(refusedFor(twoWay, { type: 'remove-amplifier', id: 'V1' })).toEqual(['last-amplifier']);
    expect(refusedFor(twoWay, { type: 'remove-amplifier', id: 'LS1' })).toEqual(['unknown-amplifier']);
  });
});
