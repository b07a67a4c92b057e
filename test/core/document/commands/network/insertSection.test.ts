import { describe, expect, it } from 'vitest';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { capacitor, inductor, resistor, speaker, twoWay } from '../../twoWay.ts';

describe('insert-section', () => {
  const trap = [inductor('La', ['@in', '@1']), capacitor('Ca', ['@1', '0']), resistor('Ra', ['@1', '@out'])];

  it('stands between the driven terminal and what was there, with fresh names and nodes', () => {
    const after = edited(twoWay, { type: 'insert-section', speakerId: 'LS1', parts: trap });
    expect(wiring(after).slice(2, 8)).toEqual(['C1 w 0', 'L3 w n1', 'C3 n1 0', 'R3 n1 n2', 'LS1 n2 0', 'J1 in hi']);
    expect(after.network.parts[3]).toMatchObject({ henry: 1e-3, dcrOhm: 0.3 });
  });

  it('finds the driven terminal of a reversed speaker', () => {
    const after = edited(twoWay, { type: 'insert-section', speakerId: 'LS2', parts: trap });
    expect(wiring(after).slice(-4)).toEqual(['L3 t2 n1', 'C3 n1 0', 'R3 n1 n2', 'LS2 0 n2']);
  });

  it('leaves the speaker where it is when the section lies across it', () => {
    const across = [resistor('Ra', ['@out', '@1']), capacitor('Ca', ['@1', '0'])];
    const after = edited(twoWay, { type: 'insert-section', speakerId: 'LS1', parts: across });
    expect(wiring(after).slice(3, 6)).toEqual(['R3 w n1', 'C3 n1 0', 'LS1 w 0']);
  });

  it('loads the speaker alone where it stands in series with another', () => {
    const inSeries = edited(twoWay, {
      type: 'insert-in-series',
      partId: 'LS1',
      end: 1,
      part: { kind: 'speaker', driverId: 'woofer', note: '' },
    });
    const after = edited(inSeries, { type: 'insert-section', speakerId: 'LS1', parts: trap });
    expect(wiring(after)).toEqual(expect.arrayContaining(['L3 w n2', 'C3 n2 n1', 'R3 n2 n3', 'LS1 n3 n1', 'LS3 n1 0']));
  });

  it('refuses unknown nodes, no part at @out, speakers in it, and a speaker that is not there', () => {
    const section = (...parts: typeof trap) => ({ type: 'insert-section', speakerId: 'LS1', parts }) as const;
    expect(refusedFor(twoWay, section(resistor('R', ['@in', 'w'])))).toEqual(['section-node']);
    expect(refusedFor(twoWay, section(resistor('R', ['@in', '@1'])))).toEqual(['section-node']);
    expect(refusedFor(twoWay, section())).toEqual(['section-node']);
    expect(refusedFor(twoWay, section(speaker('LS', ['@in', '@out'], 'woofer')))).toEqual(['section-part']);
    expect(refusedFor(twoWay, { type: 'insert-section', speakerId: 'R1', parts: trap })).toEqual(['unknown-speaker']);
    expect(refusedFor(twoWay, section(resistor('R', ['@in', '@out'], -1)))).toEqual(['too-small']);
  });
});
