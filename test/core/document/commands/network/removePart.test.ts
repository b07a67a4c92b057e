import { describe, expect, it } from 'vitest';
import { edited, refusalOf, refusedFor, wiring } from '../../edits.ts';
import { capacitor, resistor, twoWay } from '../../twoWay.ts';

const without = (id: string) => wiring(twoWay).filter((line) => !line.startsWith(`${id} `));
const withParts = (...parts: readonly Parameters<typeof Array.of>[0][]) =>
  ({ ...twoWay, network: { parts: [...twoWay.network.parts, ...parts] } }) as typeof twoWay;

describe('remove-part', () => {
  it('leaves a gap', () => {
    expect(wiring(edited(twoWay, { type: 'remove-part', partId: 'C2', how: 'leave-open' }))).toEqual(without('C2'));
  });

  it('closes up: what the part stood between becomes one node', () => {
    const after = edited(twoWay, { type: 'remove-part', partId: 'R1', how: 'close-up' });
    expect(wiring(after)).toEqual(without('R1').map((line) => line.replaceAll('t2', 't1')));
    expect(after.network.parts[1]).toBe(twoWay.network.parts[1]);
  });

  it('keeps the return, then an amplifier output, then a chosen name, whichever way the part lies', () => {
    for (const nodes of [
      ['n3', 't1'],
      ['t1', 'n3'],
    ] as const) {
      const joined = edited(withParts(resistor('R5', nodes), capacitor('C5', ['n3', '0'])), {
        type: 'remove-part',
        partId: 'R5',
        how: 'close-up',
      });
      expect(wiring(joined)).toContain('C5 t1 0');
    }
    const input = edited(twoWay, { type: 'remove-part', partId: 'J1', how: 'close-up' });
    expect(wiring(input)).toContain('C2 in t1');
    const toReturn = edited(withParts(resistor('R5', ['0', 'a']), capacitor('C5', ['a', 'w'])), {
      type: 'remove-part',
      partId: 'R5',
      how: 'close-up',
    });
    expect(wiring(toReturn)).toContain('C5 0 w');
  });

  it('refuses to close up where that shorts a speaker, the amplifier or another part', () => {
    expect(refusedFor(twoWay, { type: 'remove-part', partId: 'C1', how: 'close-up' })).toEqual(['would-short']);
    expect(refusedFor(twoWay, { type: 'remove-part', partId: 'R2', how: 'close-up' })).toEqual(['would-short']);
    const bypassed = withParts(capacitor('C5', ['t1', 't2']));
    const [flaw] = refusalOf(bypassed, { type: 'remove-part', partId: 'R1', how: 'close-up' });
    expect(flaw).toMatchObject({ code: 'document.would-short-part', place: { kind: 'part', id: 'C5' } });
  });

  it('refuses to close up where a jumper carries the short on', () => {
    const shunted = withParts(resistor('R5', ['hi', '0'], 47));
    const [flaw] = refusalOf(shunted, { type: 'remove-part', partId: 'R5', how: 'close-up' });
    expect(flaw).toMatchObject({ code: 'document.would-short', place: { id: 'V1' } });
  });

  it('refuses speakers, amplifiers and what is not there', () => {
    expect(refusedFor(twoWay, { type: 'remove-part', partId: 'LS1', how: 'leave-open' })).toEqual(['not-removable']);
    expect(refusedFor(twoWay, { type: 'remove-part', partId: 'V1', how: 'close-up' })).toEqual(['not-removable']);
    expect(refusedFor(twoWay, { type: 'remove-part', partId: 'Q1', how: 'close-up' })).toEqual(['unknown-part']);
  });
});
