import { describe, expect, it } from 'vitest';
import { word } from '../../../../../src/core/messages/word.ts';
import { edited, refusalOf, refusedFor, wiring } from '../../edits.ts';
import { amplifier, capacitor, inductor, jumper, speaker, twoWay } from '../../twoWay.ts';

const simple = [
  amplifier('V1', ['in', '0']),
  inductor('L1', ['in', 'w']),
  speaker('LS1', ['w', '0'], 'woofer'),
  capacitor('C1', ['in', 't']),
  speaker('LS2', ['t', '0'], 'tweeter'),
];

describe('replace-network', () => {
  it('takes the parts, keeping places and settings of what stays', () => {
    const after = edited(twoWay, { type: 'replace-network', parts: simple });
    expect(after.network.parts).toEqual(simple);
    expect(after.enclosure).toBe(twoWay.enclosure);
    expect(after.chain).toBe(twoWay.chain);
    expect(after.network.parts[0]).toBe(twoWay.network.parts[0]);
  });

  it('finds drivers by id or by name without spaces and capitals', () => {
    const { name } = twoWay.drivers[0]!;
    const text = name.toUpperCase().replaceAll(/[^A-Z0-9]/g, '_');
    const parts = simple.map((part) => (part.id === 'LS1' ? speaker('LS1', part.nodes, text) : part));
    expect(edited(twoWay, { type: 'replace-network', parts }).network.parts).toEqual(simple);
  });

  it('keeps the present driver of a speaker that names none', () => {
    const parts = simple.map((part) => (part.id === 'LS2' ? speaker('LS2', part.nodes, '') : part));
    expect(edited(twoWay, { type: 'replace-network', parts }).network.parts).toEqual(simple);
  });

  it('gives new speakers a place and takes it from those that went; drivers stay', () => {
    const parts = [...simple.slice(0, 3), speaker('LS5', ['w', '0'], 'woofer')];
    const after = edited(twoWay, { type: 'replace-network', parts });
    expect(after.enclosure.mounts.map((mount) => [mount.partId, mount.chamberId])).toEqual([
      ['LS1', 'main'],
      ['LS5', 'main'],
    ]);
    expect(after.drivers).toBe(twoWay.drivers);
  });

  it('drives text without an amplifier by the present one, and gives a new one its settings', () => {
    expect(wiring(edited(twoWay, { type: 'replace-network', parts: simple.slice(1) }))[0]).toBe('V1 in 0');
    const parts = [amplifier('Vx', ['in', '0']), ...simple.slice(1)];
    const { chain } = edited(twoWay, { type: 'replace-network', parts });
    expect(chain.amplifiers).toEqual([{ ...twoWay.chain.amplifiers[0], id: 'Vx' }]);
  });

  it('names the drivers there are when one is not known', () => {
    const [flaw] = refusalOf(twoWay, { type: 'replace-network', parts: [speaker('LS1', ['in', '0'], 'subwoofer')] });
    expect(word(flaw!).sentence).toBe('There is no driver “subwoofer” for LS1.');
    expect(word(flaw!).remedy).toMatch(/^Drivers of this project: woofer \(.*\), tweeter \(.*\)\.$/);
  });

  it.each([
    ['no-amplifier', [speaker('LS1', ['a', '0'], 'woofer')]],
    ['no-speaker', [simple[0]!, inductor('L1', ['in', '0'])]],
    ['duplicate-id', [...simple, inductor('l1', ['in', 'w'])]],
    ['node-case', [...simple, inductor('L5', ['IN', 'w'])]],
    ['bad-node-name', [...simple, inductor('L5', ['in', 'a b'])]],
    ['too-small', [...simple, inductor('L5', ['in', 'w'], -1)]],
    ['would-short', [...simple, jumper('J1', ['in', '0'])]],
    ['amplifier-return', [...simple, amplifier('V2', ['q', 'r'])]],
    ['too-many', Array.from({ length: 201 }, (_, k) => (k < 5 ? simple[k]! : inductor(`L${k}`, ['in', 'w'])))],
  ])('refuses as %s', (code, parts) => {
    expect(refusedFor(twoWay, { type: 'replace-network', parts })).toEqual([code]);
  });
});
