import { describe, expect, it } from 'vitest';
import type { Command } from '../../../../src/core/document/command.ts';
import { describeCommand } from '../../../../src/core/document/describe/describeCommand.ts';
import { plainMount } from '../../../../src/core/document/plain.ts';
import { newDriver } from '../../../../src/core/document/start/newDriver.ts';
import { edited } from '../edits.ts';
import { resistor, twoWay } from '../twoWay.ts';

const ohms = { kind: 'resistor', ohm: 4.7, ratedPowerW: null, note: '' } as const;
const kept = edited(twoWay, { type: 'keep-state', name: 'before' });

describe('describeCommand', () => {
  it.each<[string, Command]>([
    ['name “B”', { type: 'set-name', name: 'B' }],
    ['notes', { type: 'set-notes', notes: 'x' }],
    ['air 20 → 25 °C', { type: 'set-air', changes: { temperatureC: 25 } }],
    ['listening distance 2.0 → 3.0 m', { type: 'set-listening', changes: { distanceM: 3 } }],
    ['drive 2.83 → 4.0 V', { type: 'set-drive', driveV: 4 }],
    ['V1 cable resistance 0.1 → 0.2 Ω', { type: 'set-amplifier', id: 'V1', changes: { cableOhm: 0.2 } }],
    ['R1 1.0 → 2.2 Ω', { type: 'set-part', partId: 'R1', changes: { ohm: 2.2 } }],
    ['C2 6.8 → 8.2 µF', { type: 'set-part', partId: 'C2', changes: { farad: 8.2e-6 } }],
    ['L1 winding resistance 0.3 → 0.25 Ω', { type: 'set-part', partId: 'L1', changes: { dcrOhm: 0.25 } }],
    ['R1 1.0 → 1.00001 Ω', { type: 'set-part', partId: 'R1', changes: { ohm: 1.00001 } }],
    ['R1 rated power 5.0 W → none', { type: 'set-part', partId: 'R1', changes: { ratedPowerW: null } }],
    ['L1 inductance and winding resistance', { type: 'set-part', partId: 'L1', changes: { henry: 2e-3, dcrOhm: 0.4 } }],
    ['LS2: 170 mm woofer (invented)', { type: 'set-part', partId: 'LS2', changes: { driverId: 'woofer' } }],
    ['C2 swapped for resistor 4.7 Ω', { type: 'swap-part', partId: 'C2', part: ohms }],
    ['resistor 4.7 Ω in series with LS1', { type: 'insert-in-series', partId: 'LS1', end: 0, part: ohms }],
    ['resistor 4.7 Ω across w and 0', { type: 'add-across', nodes: ['w', '0'], part: ohms }],
    ['R1 moved to w', { type: 'move-end', partId: 'R1', end: 0, to: 'w' }],
    ['R1 removed', { type: 'remove-part', partId: 'R1', how: 'close-up' }],
    ['R1 removed, gap left open', { type: 'remove-part', partId: 'R1', how: 'leave-open' }],
    ['R1 renamed R9', { type: 'rename-part', partId: 'R1', to: 'R9' }],
    ['LS2 reversed', { type: 'reverse-speaker', partId: 'LS2' }],
    [
      'section of 1 part before LS2',
      { type: 'insert-section', speakerId: 'LS2', parts: [resistor('R', ['@in', '@out'])] },
    ],
    ['circuit of 2 parts', { type: 'replace-network', parts: twoWay.network.parts.slice(0, 2) }],
    ['amplifier V2 removed', { type: 'remove-amplifier', id: 'V2' }],
    [
      '110 mm mid (invented) added',
      {
        type: 'add-way',
        driver: newDriver('mid', 'm'),
        mount: { chamberId: null, ...plainMount, xM: 0, yM: 0.2, acousticCentreZM: 0 },
      },
    ],
    ['LS2 (28 mm dome tweeter (invented)) removed', { type: 'remove-way', speakerId: 'LS2' }],
    [
      '170 mm woofer (invented) resonance fs 38 → 41 Hz',
      { type: 'set-driver', driverId: 'woofer', changes: { entered: { ...twoWay.drivers[0]!.entered, fsHz: 41 } } },
    ],
    [
      '170 mm woofer (invented) measured curves',
      { type: 'set-driver', driverId: 'woofer', changes: { measured: null } },
    ],
    ['cabinet width 220 → 240 mm', { type: 'set-enclosure', changes: { widthM: 0.24 } }],
    ['port length 118 → 96 mm', { type: 'set-port', id: 'port', changes: { lengthM: 0.096 } }],
    ['port moved', { type: 'set-port', id: 'port', changes: { xM: 0.01 } }],
    [
      'port diameter 50 → 60 mm',
      { type: 'set-port', id: 'port', changes: { shape: { kind: 'round', diameterM: 0.06 } } },
    ],
    ['port removed', { type: 'remove-port', id: 'port' }],
    [
      'Main upper bound 382 → 350 mm',
      {
        type: 'set-chamber',
        id: 'main',
        changes: { volume: { ...twoWay.enclosure.chambers[0]!.volume, topM: 0.35 } as never },
      },
    ],
    ['Spare removed', { type: 'remove-chamber', id: 'spare' }],
    ['LS1 (170 mm woofer (invented)) moved', { type: 'set-mount', partId: 'LS1', changes: { xM: 0.01, yM: 0.2 } }],
    [
      'LS1 (170 mm woofer (invented)) chamber main → spare',
      { type: 'set-mount', partId: 'LS1', changes: { chamberId: 'spare' } },
    ],
    ['curve c1 removed', { type: 'remove-curve', id: 'c1' }],
    ['“after” kept', { type: 'keep-state', name: 'after' }],
    ['“before” dropped', { type: 'drop-state', id: 'state-1' }],
    ['back to “before”', { type: 'return-to-state', id: 'state-1' }],
    [
      'name “B” and 1 more',
      {
        type: 'together',
        commands: [
          { type: 'set-name', name: 'B' },
          { type: 'set-notes', notes: '' },
        ],
      },
    ],
  ])('%s', (label, command) => {
    expect(describeCommand(command, kept)).toBe(label);
  });
});
