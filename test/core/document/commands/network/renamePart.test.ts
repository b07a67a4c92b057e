import { describe, expect, it } from 'vitest';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('rename-part', () => {
  it('takes a speaker place and amplifier settings along', () => {
    const after = edited(
      twoWay,
      { type: 'rename-part', partId: 'LS1', to: 'LS9' },
      { type: 'rename-part', partId: 'V1', to: 'Vleft' },
      { type: 'rename-part', partId: 'R1', to: 'Rpad' },
    );
    expect(wiring(after).slice(0, 4)).toEqual(['Vleft in 0', 'L1 in w', 'C1 w 0', 'LS9 w 0']);
    expect(after.enclosure.mounts.map((mount) => mount.partId)).toEqual(['LS9', 'LS2']);
    expect(after.chain.amplifiers.map(({ id }) => id)).toEqual(['Vleft']);
  });

  it('takes another spelling of its own name', () => {
    expect(wiring(edited(twoWay, { type: 'rename-part', partId: 'R1', to: 'r1' }))).toContain('r1 t1 t2');
  });

  it.each([
    ['name-taken', 'R1', 'R2'],
    ['name-taken', 'R1', 'r2'],
    ['bad-part-name', 'R1', 'C7'],
    ['bad-part-name', 'L1', 'LS7'],
    ['bad-part-name', 'R1', 'R 1'],
    ['bad-part-name', 'R1', ''],
    ['too-long', 'R1', `R${'1'.repeat(60)}`],
    ['unknown-part', 'R7', 'R8'],
  ])('refuses as %s: %s to %s', (code, partId, to) => {
    expect(refusedFor(twoWay, { type: 'rename-part', partId, to })).toEqual([code]);
  });
});
