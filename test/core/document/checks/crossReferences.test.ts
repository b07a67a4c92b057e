import { describe, expect, it } from 'vitest';
import { crossReferences } from '../../../../src/core/document/checks/crossReferences.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { word } from '../../../../src/core/messages/word.ts';
import { edited, expectWorded } from '../edits.ts';
import { amplifier, twoWay } from '../twoWay.ts';

const mount = twoWay.enclosure.mounts[0]!;
const enclosure = (changes: Partial<Project['enclosure']>): Partial<Project> => ({
  enclosure: { ...twoWay.enclosure, ...changes },
});
const parts = twoWay.network.parts;

describe('crossReferences', () => {
  it('finds nothing in a document that hangs together', () => {
    expect(crossReferences(twoWay)).toEqual([]);
    expect(crossReferences(edited(twoWay, { type: 'keep-state', name: 'a' }))).toEqual([]);
  });

  it.each<[string, Partial<Project>]>([
    ['mount-without-speaker', enclosure({ mounts: [...twoWay.enclosure.mounts, { ...mount, partId: 'LS7' }] })],
    ['mount-without-speaker', enclosure({ mounts: [...twoWay.enclosure.mounts, { ...mount, partId: 'R1' }] })],
    ['duplicate-id', enclosure({ mounts: [...twoWay.enclosure.mounts, mount] })],
    ['speaker-without-mount', enclosure({ mounts: [mount] })],
    ['mount-without-chamber', enclosure({ mounts: [{ ...mount, chamberId: 'x' }, twoWay.enclosure.mounts[1]!] })],
    ['port-without-chamber', enclosure({ ports: [{ ...twoWay.enclosure.ports[0]!, chamberId: 'x' }] })],
    ['off-the-front', enclosure({ mounts: [{ ...mount, yM: -0.1 }, twoWay.enclosure.mounts[1]!] })],
    ['panel-too-thick', enclosure({ panelM: 0.2 })],
    ['speaker-without-driver', { drivers: twoWay.drivers.slice(0, 1), curves: [twoWay.curves[0]!] }],
    ['curve-without-driver', { drivers: [...twoWay.drivers.slice(0, 1), { ...twoWay.drivers[1]!, id: 't' }] }],
    ['duplicate-id', { drivers: [...twoWay.drivers, twoWay.drivers[1]!] }],
    ['curve-missing', { curves: twoWay.curves.slice(1) }],
    ['duplicate-id', { curves: [...twoWay.curves, twoWay.curves[2]!] }],
    ['duplicate-id', { network: { parts: [...parts, { ...parts[1]!, id: 'l1' }] } }],
    ['node-case', { network: { parts: [...parts, { ...parts[1]!, id: 'L9', nodes: ['IN', 'w'] }] } }],
    ['no-speaker', { network: { parts: parts.filter(({ kind }) => kind !== 'speaker') } }],
    ['no-amplifier', { network: { parts: parts.slice(1) } }],
    ['settings-without-amplifier', { network: { parts: parts.slice(1) } }],
    ['amplifier-without-settings', { network: { parts: [...parts, amplifier('V2', ['hi', '0'])] } }],
    ['amplifier-return', { network: { parts: [amplifier('V1', ['in', 'w']), ...parts.slice(1)] } }],
  ])('finds %s', (code, changes) => {
    const flaws = crossReferences({ ...twoWay, ...changes });
    expect(flaws.map((flaw) => flaw.code)).toContain(`document.${code}`);
    for (const flaw of flaws) expectWorded(flaw);
  });

  it('looks into kept states too, and says in which', () => {
    const kept = edited(twoWay, { type: 'keep-state', name: 'before' });
    const flaws = crossReferences({ ...kept, curves: twoWay.curves.slice(1), drivers: twoWay.drivers.slice(1) });
    const inState = flaws.filter(({ values }) => values.keptState === 'before');
    expect(inState.map(({ code }) => code)).toEqual(['document.curve-missing']);
    expect(word(inState[0]!).sentence).toContain('in the kept state “before”');
  });
});
