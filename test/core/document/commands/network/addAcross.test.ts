import { describe, expect, it } from 'vitest';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

const part = { kind: 'capacitor', farad: 1e-6, esrOhm: 0, note: '' } as const;

describe('add-across', () => {
  it('adds at the end, with the next name of its kind', () => {
    const after = edited(twoWay, { type: 'add-across', nodes: ['t1', 't2'], part });
    expect(wiring(after)).toEqual([...wiring(twoWay), 'C3 t1 t2']);
  });

  it('gives a second speaker a free place on the front', () => {
    const after = edited(twoWay, {
      type: 'add-across',
      nodes: ['w', '0'],
      part: { kind: 'speaker', driverId: 'tweeter', note: '' },
    });
    expect(wiring(after).at(-1)).toBe('LS3 w 0');
    expect(after.enclosure.mounts.at(-1)).toMatchObject({ partId: 'LS3', chamberId: null });
  });

  it('gives a second amplifier the settings of the first, whichever way its nodes are named', () => {
    const split = edited(
      twoWay,
      { type: 'remove-part', partId: 'J1', how: 'leave-open' },
      { type: 'add-across', nodes: ['0', 'hi'], part: { kind: 'amplifier', note: '' } },
    );
    expect(wiring(split).at(-1)).toBe('V2 hi 0');
    expect(split.chain.amplifiers).toEqual([twoWay.chain.amplifiers[0], { ...twoWay.chain.amplifiers[0], id: 'V2' }]);
  });

  it('refuses two amplifiers on one node, also through a jumper', () => {
    const source = { kind: 'amplifier', note: '' } as const;
    for (const node of ['in', 'hi']) {
      expect(refusedFor(twoWay, { type: 'add-across', nodes: [node, '0'], part: source })).toEqual([
        'would-join-amplifiers',
      ]);
    }
    expect(refusedFor(twoWay, { type: 'add-across', nodes: ['t1', 'w'], part: source })).toEqual(['amplifier-return']);
  });

  it('refuses shorts, one node twice and nodes that are not there', () => {
    const wire = { kind: 'jumper', note: '' } as const;
    expect(refusedFor(twoWay, { type: 'add-across', nodes: ['w', '0'], part: wire })).toEqual(['would-short']);
    expect(refusedFor(twoWay, { type: 'add-across', nodes: ['hi', '0'], part: wire })).toEqual(['would-short']);
    expect(refusedFor(twoWay, { type: 'add-across', nodes: ['w', 'w'], part })).toEqual(['same-node']);
    expect(refusedFor(twoWay, { type: 'add-across', nodes: ['x', 'y'], part })).toEqual([
      'unknown-node',
      'unknown-node',
    ]);
    const stranger = { kind: 'speaker', driverId: 'mid', note: '' } as const;
    expect(refusedFor(twoWay, { type: 'add-across', nodes: ['w', '0'], part: stranger })).toEqual([
      'speaker-without-driver',
    ]);
  });
});
