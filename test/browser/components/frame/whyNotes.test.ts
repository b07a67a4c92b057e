import { expect, test } from 'vitest';
import { levelsDbSpl } from '../../../../src/core/speaker/complexCurve.ts';
import { readAt } from '../../../../src/plot/index.ts';
import {
  type WhyInput,
  type WhyNote,
  whyLeastImpedance,
  whyLowEnd,
  whyPortLength,
  whyQtc,
  whySensitivity,
  whySpread,
  whyTuning,
} from '../../../../src/ui/frame/why/index.ts';
import { demo, testStore } from '../plots/openWorkbench.tsx';

// A note must be able to be followed with a pocket calculator: what stands in its lines, put into its formula, is its
// result. Three digits in each line: 1 % for roots and products of four of them.
const FROM_THE_LINES = 0.01;

const input = (): WhyInput => {
  const { project, evaluation } = testStore().getState();
  if (!evaluation) throw new Error('The demonstration is not computed.');
  return { project, evaluation, units: 'metric' };
};
const SI: Readonly<Record<string, number>> = { mm: 1e-3, 'cm²': 1e-4, L: 1e-3, kHz: 1e3, mV: 1e-3 };
const read = (note: WhyNote | null, symbol: string): number => {
  const line = [...(note?.lines ?? []), ...(note ? [note.result] : [])].find((one) => one.symbol === symbol);
  const [number = '', unit = ''] = line?.value.replace('±', '').split(' ') ?? [];
  return Number(number) * (SI[unit] ?? 1);
};
const expectNear = (value: number, wanted: number) => expect(Math.abs(value / wanted - 1)).toBeLessThan(FROM_THE_LINES);
const chamberWith = (what: 'tuningHz' | 'sealed') =>
  input().evaluation.keyFigures.chambers.find((chamber) => chamber[what] !== null)?.id ?? '';

test('tuning: fB from c, S, the effective length and V', () => {
  const note = whyTuning(input(), chamberWith('tuningHz'));
  const fB = (read(note, 'c') / (2 * Math.PI)) * Math.sqrt(read(note, 'S') / (read(note, 'Lₑ') * read(note, 'V')));
  expectNear(read(note, 'fB'), fB);
});

test('port length: L from c, S, fB, V and the ends, and it is the length in the document', () => {
  const portId = demo.enclosure.ports[0]?.id ?? '';
  const note = whyPortLength(input(), portId);
  const [c, S, fB, V] = ['c', 'S', 'fB', 'V'].map((symbol) => read(note, symbol)) as [number, number, number, number];
  expectNear(read(note, 'L') + read(note, 'ΔL'), (c ** 2 * S) / (4 * Math.PI ** 2 * fB ** 2 * V));
  expect(read(note, 'L')).toBeCloseTo(demo.enclosure.ports[0]?.lengthM ?? 0, 4);
});

test('Qtc and fc: from Qts, fs, Vas and V', () => {
  const note = whyQtc(input(), chamberWith('sealed'));
  const rise = Math.sqrt(1 + read(note, 'Vas') / read(note, 'V'));
  // Qts has two digits only.
  expect(Math.abs(read(note, 'Qtc') / (read(note, 'Qts') * rise) - 1)).toBeLessThan(0.02);
  expectNear(read(note, 'fc'), read(note, 'fs') * rise);
});

test('least impedance: voltage over current', () => {
  const note = whyLeastImpedance(input());
  expectNear(read(note, '|Z|'), read(note, 'V') / read(note, 'I'));
});

test('sensitivity: the strip’s number, and what drive and distance add', () => {
  const note = whySensitivity(input());
  expect(read(note, 'L')).toBeCloseTo(input().evaluation.keyFigures.sensitivityDbSpl ?? 0, 1);
  // 20 lg(1 / 2.5) = -7.96 dB.
  expect(note?.lines.find((line) => line.symbol === 'r')?.value).toContain('−8.0 dB');
});

test('lower end: the sum at f₃ is 3 dB below the mean that is shown', () => {
  const note = whyLowEnd(input());
  const { simulation } = input().evaluation;
  expect(read(note, 'L(f₃)')).toBeCloseTo(read(note, 'Lm') - 3, 6);
  const level = readAt(simulation.frequenciesHz, levelsDbSpl(simulation.sum), read(note, 'f₃')) ?? 0;
  // f₃ has three digits, the level one decimal; the bass falls by 24 dB per octave at most.
  expect(Math.abs(level - read(note, 'L(f₃)'))).toBeLessThan(0.3);
});

test('spread: half of greatest less least, as the strip shows it', () => {
  const note = whySpread(input());
  // Both levels have two decimals, the result one.
  expect(Math.abs(read(note, '±') - (read(note, 'Lmax') - read(note, 'Lmin')) / 2)).toBeLessThan(0.06);
});

test('every note states formula, limits and source', () => {
  const all = [
    whyTuning(input(), chamberWith('tuningHz')),
    whyPortLength(input(), demo.enclosure.ports[0]?.id ?? ''),
    whyQtc(input(), chamberWith('sealed')),
    whyLeastImpedance(input()),
    whySensitivity(input()),
    whyLowEnd(input()),
    whySpread(input()),
  ];
  for (const note of all) {
    for (const text of [note?.formula, note?.holds, note?.source]) expect(text?.length ?? 0).toBeGreaterThan(10);
    for (const line of note?.lines ?? []) expect(line.value).not.toMatch(/NaN|undefined|Infinity/);
  }
});

test('what the design no longer has is not explained', () => {
  expect(whyTuning(input(), 'gone')).toBeNull();
  expect(whyPortLength(input(), 'gone')).toBeNull();
  expect(whyQtc(input(), 'gone')).toBeNull();
});
