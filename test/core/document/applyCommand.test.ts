import { describe, expect, it } from 'vitest';
import { applyCommand } from '../../../src/core/document/applyCommand.ts';
import type { Command } from '../../../src/core/document/command.ts';
import { edited, refusedFor } from './edits.ts';
import { twoWay } from './twoWay.ts';

describe('applyCommand', () => {
  it('keeps identical what an edit does not touch', () => {
    const after = edited(twoWay, { type: 'set-part', partId: 'C2', changes: { farad: 8.2e-6 } });
    const { network, ...rest } = twoWay;
    for (const [key, value] of Object.entries(rest)) expect(after[key as keyof typeof after], key).toBe(value);
    for (const part of network.parts.filter(({ id }) => id !== 'C2')) expect(after.network.parts).toContain(part);
  });

  it('returns the same document when nothing changes', () => {
    const same: readonly Command[] = [
      { type: 'set-part', partId: 'C2', changes: { farad: 6.8e-6 } },
      { type: 'set-name', name: 'Two-way' },
      { type: 'set-drive', driveV: 2.83 },
      { type: 'set-listening', changes: { distanceM: 2 } },
      { type: 'set-chamber', id: 'main', changes: { volume: { ...twoWay.enclosure.chambers[0]!.volume } } },
      { type: 'set-enclosure', changes: { widthM: 0.22 } },
      { type: 'move-end', partId: 'C2', end: 0, to: 'hi' },
      { type: 'replace-network', parts: structuredClone(twoWay.network.parts) },
      { type: 'together', commands: [] },
    ];
    for (const command of same) {
      const result = applyCommand(twoWay, command);
      expect(result.ok && result.value, command.type).toBe(twoWay);
    }
  });

  it('carries out several as one, or none of them', () => {
    const good: Command = { type: 'set-drive', driveV: 4 };
    const bad: Command = { type: 'set-part', partId: 'C9', changes: { farad: 1e-6 } };
    expect(edited(twoWay, { type: 'together', commands: [good, { type: 'set-name', name: 'B' }] })).toMatchObject({
      name: 'B',
      chain: { driveV: 4 },
    });
    expect(refusedFor(twoWay, { type: 'together', commands: [good, bad] })).toEqual(['unknown-part']);
  });

  it('judges several together by where they end, not by what lies between', () => {
    const commands: Command[] = [
      { type: 'set-port', id: 'port', changes: { chamberId: 'new' } },
      { type: 'add-chamber', chamber: { ...twoWay.enclosure.chambers[1]!, id: 'new', name: 'New' } },
    ];
    expect(edited(twoWay, { type: 'together', commands }).enclosure.ports[0]!.chamberId).toBe('new');
    expect(refusedFor(twoWay, commands[0]!)).toEqual(['port-without-chamber']);
  });
});
