import { describe, expect, it } from 'vitest';
import { newPort } from '../../../../../src/core/document/start/newPort.ts';
import { word } from '../../../../../src/core/messages/word.ts';
import { edited, refusalOf, refusedFor } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('ports', () => {
  const port = newPort(twoWay, 'spare');

  it('are added, changed and removed', () => {
    const added = edited(twoWay, { type: 'add-port', port });
    expect(added.enclosure.ports.at(-1)).toBe(port);
    const longer = edited(added, { type: 'set-port', id: port.id, changes: { lengthM: 0.2, count: 2 } });
    expect(longer.enclosure.ports.at(-1)).toEqual({ ...port, lengthM: 0.2, count: 2 });
    expect(longer.enclosure.ports[0]).toBe(twoWay.enclosure.ports[0]);
    expect(edited(longer, { type: 'remove-port', id: port.id })).toEqual(twoWay);
  });

  it.each([
    ['unknown-port', { type: 'remove-port', id: 'p' }],
    ['unknown-port', { type: 'set-port', id: 'p', changes: { lengthM: 0.1 } }],
    ['duplicate-id', { type: 'add-port', port: { ...port, id: 'port' } }],
    ['port-without-chamber', { type: 'add-port', port: { ...port, chamberId: 'attic' } }],
    ['port-without-chamber', { type: 'set-port', id: 'port', changes: { chamberId: 'attic' } }],
    ['off-the-front', { type: 'set-port', id: 'port', changes: { xM: 0.2 } }],
    ['too-small', { type: 'set-port', id: 'port', changes: { shape: { kind: 'round', diameterM: 0 } } }],
    ['wrong-type', { type: 'set-port', id: 'port', changes: { count: 1.5 } }],
    ['too-great', { type: 'set-port', id: 'port', changes: { count: 9 } }],
  ] as const)('refuse as %s: %o', (code, command) => {
    expect(refusedFor(twoWay, command)).toEqual([code]);
  });

  it('name place, value and limit', () => {
    const [flaw] = refusalOf(twoWay, { type: 'set-port', id: 'port', changes: { lengthM: -0.02 } });
    expect(flaw!.place).toEqual({ kind: 'port', id: 'port', field: 'lengthM' });
    expect(word(flaw!).sentence).toBe('The length of the port is −20 mm; it must be at least 0 mm.');
  });
});
