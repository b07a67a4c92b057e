import { describe, expect, it } from 'vitest';
import type { Part } from '../../../../../src/core/circuit/part.ts';
import type { Project } from '../../../../../src/core/document/schema.ts';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { amplifier, capacitor, inductor, jumper, resistor, speaker, twoWay } from '../../twoWay.ts';

const withNetwork = (parts: readonly Part[]): Project => edited(twoWay, { type: 'replace-network', parts });

describe('remove-way', () => {
  it('takes the speaker, its place, the parts that feed it alone, its driver and the driver curves', () => {
    const after = edited(twoWay, { type: 'remove-way', speakerId: 'LS2' });
    expect(wiring(after)).toEqual(['V1 in 0', 'L1 in w', 'C1 w 0', 'LS1 w 0']);
    expect(after.enclosure.mounts.map((mount) => mount.partId)).toEqual(['LS1']);
    expect(after.drivers.map(({ id }) => id)).toEqual(['woofer']);
    expect(after.curves.map(({ id }) => id)).toEqual(['c1', 'c3']);
    expect(after.enclosure.chambers).toBe(twoWay.enclosure.chambers);
  });

  it('keeps what several ways share', () => {
    const shared = withNetwork([
      amplifier('V1', ['in', '0']),
      resistor('R1', ['in', 's'], 0.5),
      resistor('R2', ['s', '0'], 30),
      inductor('L1', ['s', 'w']),
      capacitor('C1', ['w', '0']),
      speaker('LS1', ['w', '0'], 'woofer'),
      capacitor('C2', ['s', 't']),
      speaker('LS2', ['t', '0'], 'tweeter'),
    ]);
    const after = edited(shared, { type: 'remove-way', speakerId: 'LS1' });
    expect(wiring(after)).toEqual(['V1 in 0', 'R1 in s', 'R2 s 0', 'C2 s t', 'LS2 t 0']);
  });

  it('keeps the driver that another speaker uses', () => {
    const pair = edited(twoWay, {
      type: 'add-across',
      nodes: ['w', '0'],
      part: { kind: 'speaker', driverId: 'woofer', note: '' },
    });
    const after = edited(pair, { type: 'remove-way', speakerId: 'LS1' });
    expect(wiring(after)).toEqual(wiring(pair).filter((line) => !line.startsWith('LS1 ')));
    expect(after.drivers).toBe(twoWay.drivers);
  });

  it('takes a channel along that feeds this speaker alone', () => {
    const split = edited(
      twoWay,
      { type: 'remove-part', partId: 'J1', how: 'leave-open' },
      { type: 'add-across', nodes: ['hi', '0'], part: { kind: 'amplifier', note: '' } },
    );
    const after = edited(split, { type: 'remove-way', speakerId: 'LS2' });
    expect(wiring(after)).toEqual(['V1 in 0', 'L1 in w', 'C1 w 0', 'LS1 w 0']);
    expect(after.chain.amplifiers.map(({ id }) => id)).toEqual(['V1']);
  });

  it('closes up where speakers stand in series, with what lay across the one that goes', () => {
    const inSeries = withNetwork([
      amplifier('V1', ['in', '0']),
      speaker('LS1', ['in', 'm'], 'woofer'),
      speaker('LS2', ['m', '0'], 'tweeter'),
    ]);
    expect(wiring(edited(inSeries, { type: 'remove-way', speakerId: 'LS1' }))).toEqual(['V1 in 0', 'LS2 in 0']);
    expect(wiring(edited(inSeries, { type: 'remove-way', speakerId: 'LS2' }))).toEqual(['V1 in 0', 'LS1 in 0']);
  });

  it('leaves the part across a series way that still feeds the other', () => {
    const series = withNetwork([
      amplifier('V1', ['in', '0']),
      speaker('LS1', ['in', 'm'], 'woofer'),
      capacitor('C1', ['in', 'm']),
      speaker('LS2', ['m', '0'], 'tweeter'),
      inductor('L1', ['m', '0']),
    ]);
    expect(wiring(edited(series, { type: 'remove-way', speakerId: 'LS2' }))).toEqual([
      'V1 in 0',
      'LS1 in m',
      'C1 in m',
      'L1 m 0',
    ]);
  });

  it('keeps driver and curves for a kept state that has them', () => {
    const kept = edited(twoWay, { type: 'keep-state', name: 'before' });
    const after = edited(kept, { type: 'remove-way', speakerId: 'LS1' });
    expect(after.drivers.map(({ id }) => id)).toEqual(['tweeter']);
    expect(after.curves).toBe(twoWay.curves);
  });

  it('refuses the last way, and what is no speaker', () => {
    const alone = edited(twoWay, { type: 'remove-way', speakerId: 'LS2' });
    expect(refusedFor(alone, { type: 'remove-way', speakerId: 'LS1' })).toEqual(['last-way']);
    expect(refusedFor(twoWay, { type: 'remove-way', speakerId: 'R1' })).toEqual(['unknown-speaker']);
  });

  it('closes up between speakers in parallel and one in series with both', () => {
    const bridged = withNetwork([
      amplifier('V1', ['in', '0']),
      speaker('LS1', ['in', 'm'], 'woofer'),
      speaker('LS2', ['m', '0'], 'tweeter'),
      speaker('LS3', ['in', 'p'], 'woofer'),
      jumper('J1', ['p', 'm']),
    ]);
    const one = edited(bridged, { type: 'remove-way', speakerId: 'LS1' });
    expect(wiring(one)).toEqual(['V1 in 0', 'LS2 m 0', 'LS3 in p', 'J1 p m']);
    const both = edited(bridged, { type: 'remove-way', speakerId: 'LS2' });
    expect(wiring(both)).toEqual(['V1 in 0', 'LS1 in 0', 'LS3 in p', 'J1 p 0']);
  });
});
