import { describe, expect, it } from 'vitest';
import { compareProjects } from '../../../src/core/document/compareProjects.ts';
import { edited } from './edits.ts';
import { twoWay } from './twoWay.ts';

describe('compareProjects', () => {
  const kept = edited(twoWay, { type: 'keep-state', name: 'before' });
  const [state] = kept.snapshots;

  it('finds nothing where nothing differs', () => {
    expect(compareProjects(state!, kept)).toEqual([]);
    expect(compareProjects(structuredClone(twoWay), twoWay)).toEqual([]);
  });

  it('lists every changed field with place, before and after', () => {
    const after = edited(
      kept,
      { type: 'set-drive', driveV: 4 },
      { type: 'set-listening', changes: { distanceM: 3 } },
      { type: 'set-enclosure', changes: { widthM: 0.24 } },
      { type: 'set-port', id: 'port', changes: { lengthM: 0.096 } },
      { type: 'set-mount', partId: 'LS1', changes: { yM: 0.16 } },
      { type: 'set-part', partId: 'R1', changes: { ohm: 2.2 } },
      { type: 'move-end', partId: 'R2', end: 0, to: 't1' },
      { type: 'set-amplifier', id: 'V1', changes: { cableOhm: 0.2 } },
      { type: 'set-driver', driverId: 'woofer', changes: { measured: null } },
    );
    expect(compareProjects(state!, after)).toEqual([
      { place: { kind: 'field', field: 'chain' }, field: 'driveV', before: 2.83, after: 4 },
      { place: { kind: 'field', field: 'listening' }, field: 'distanceM', before: 2, after: 3 },
      { place: { kind: 'driver', id: 'woofer' }, field: 'measured.responseCurveId', before: 'c1', after: null },
      { place: { kind: 'driver', id: 'woofer' }, field: 'measured.blendHz', before: 300, after: null },
      { place: { kind: 'field', field: 'enclosure' }, field: 'widthM', before: 0.22, after: 0.24 },
      { place: { kind: 'port', id: 'port' }, field: 'lengthM', before: 0.118, after: 0.096 },
      { place: { kind: 'mount', id: 'LS1' }, field: 'yM', before: 0.15, after: 0.16 },
      { place: { kind: 'part', id: 'R1' }, field: 'ohm', before: 1, after: 2.2 },
      { place: { kind: 'part', id: 'R2' }, field: 'nodes', before: 't2 – 0', after: 't1 – 0' },
      { place: { kind: 'part', id: 'V1' }, field: 'cableOhm', before: 0.1, after: 0.2 },
    ]);
  });

  it('lists what came and what went', () => {
    const after = edited(
      kept,
      { type: 'remove-part', partId: 'R1', how: 'leave-open' },
      { type: 'add-across', nodes: ['w', '0'], part: { kind: 'resistor', ohm: 47, ratedPowerW: null, note: '' } },
      { type: 'remove-chamber', id: 'spare' },
    );
    expect(compareProjects(state!, after)).toEqual([
      { place: { kind: 'chamber', id: 'spare' }, field: '', before: 'Spare', after: null },
      { place: { kind: 'part', id: 'R1' }, field: '', before: 'R1', after: null },
      { place: { kind: 'part', id: 'R3' }, field: '', before: null, after: 'R3' },
    ]);
  });
});
