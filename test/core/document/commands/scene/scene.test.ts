import { describe, expect, it } from 'vitest';
import type { Command } from '../../../../../src/core/document/command.ts';
import { word } from '../../../../../src/core/messages/word.ts';
import { edited, refusalOf, refusedFor } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('name, notes, air, listening, drive and amplifiers', () => {
  it('set what they name and nothing else', () => {
    expect(edited(twoWay, { type: 'set-name', name: 'Shelf' })).toEqual({ ...twoWay, name: 'Shelf' });
    expect(edited(twoWay, { type: 'set-notes', notes: 'Glue first.' })).toEqual({ ...twoWay, notes: 'Glue first.' });
    expect(edited(twoWay, { type: 'set-air', changes: { temperatureC: 28 } }).air).toEqual({
      ...twoWay.air,
      temperatureC: 28,
    });
    expect(edited(twoWay, { type: 'set-listening', changes: { horizontalDeg: -30 } }).listening).toEqual({
      ...twoWay.listening,
      horizontalDeg: -30,
    });
    expect(edited(twoWay, { type: 'set-drive', driveV: 9 }).chain).toEqual({ ...twoWay.chain, driveV: 9 });
    const { chain } = edited(twoWay, { type: 'set-amplifier', id: 'V1', changes: { ratedMinimumLoadOhm: 8 } });
    expect(chain.amplifiers).toEqual([{ ...twoWay.chain.amplifiers[0], ratedMinimumLoadOhm: 8 }]);
  });

  it.each<[string, Command, string]>([
    ['an empty name', { type: 'set-name', name: '' }, 'empty'],
    ['a name of 161 characters', { type: 'set-name', name: 'x'.repeat(161) }, 'too-long'],
    ['notes of 20 001 characters', { type: 'set-notes', notes: 'x'.repeat(20001) }, 'too-long'],
    ['air at -100 °C', { type: 'set-air', changes: { temperatureC: -100 } }, 'too-small'],
    ['120 % humidity', { type: 'set-air', changes: { humidityFraction: 1.2 } }, 'too-great'],
    ['no distance', { type: 'set-listening', changes: { distanceM: 0 } }, 'too-small'],
    ['an angle that is no number', { type: 'set-listening', changes: { verticalDeg: Number.NaN } }, 'wrong-type'],
    ['an infinite height', { type: 'set-listening', changes: { heightM: Number.POSITIVE_INFINITY } }, 'wrong-type'],
    ['a drive of -3 V', { type: 'set-drive', driveV: -3 }, 'too-small'],
    ['a cable of -1 Ω', { type: 'set-amplifier', id: 'V1', changes: { cableOhm: -1 } }, 'too-small'],
    [
      'an amplifier that is not there',
      { type: 'set-amplifier', id: 'V2', changes: { cableOhm: 1 } },
      'unknown-amplifier',
    ],
  ])('refuse %s', (_, command, code) => {
    expect(refusedFor(twoWay, command)).toEqual([code]);
  });

  it('name the place, the value and the limit in the units people use', () => {
    const [flaw] = refusalOf(twoWay, { type: 'set-drive', driveV: -3 });
    expect(flaw!.place).toEqual({ kind: 'field', field: 'chain.driveV' });
    expect(word(flaw!)).toEqual({
      sentence: 'The drive is −3.0 V; it must be above 0 V.',
      remedy: 'Enter a number above 0 V.',
    });
  });

  it('say which channel an amplifier value belongs to', () => {
    const [flaw] = refusalOf(twoWay, { type: 'set-amplifier', id: 'V1', changes: { cableOhm: -1 } });
    expect(word(flaw!).sentence).toBe('The cable resistance of amplifier 1 is −1.0 Ω; it must be at least 0 Ω.');
  });
});
