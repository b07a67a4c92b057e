import { describe, expect, it } from 'vitest';
import { type ReadCurves, readColumns } from '../../../src/core/measured/readColumns.ts';
import { word } from '../../../src/core/messages/word.ts';

const read = (text: string): ReadCurves => {
  const result = readColumns(text, 'a.dat');
  if (!result.ok) throw new Error(result.problems[0]!.code);
  return result.value;
};
const codesOf = ({ notes }: ReadCurves): readonly string[] => notes.map((n) => n.code);
const failure = (text: string) => {
  const result = readColumns(text, 'a.dat');
  if (result.ok) throw new Error('was read');
  return result.problems[0]!;
};
const GUESSED = 'measured.quantity-guessed';

describe('readColumns', () => {
  // One curve in many clothes.
  const wanted = { frequenciesHz: [20.5, 1000, 20000], magnitudes: [80.25, 88, 79.5], phasesDeg: [170, -5.5, -120] };
  it.each([
    ['tabs', 'Hz\tdB\tdeg\n20.5\t80.25\t170\n1000\t88\t-5.5\n20000\t79.5\t-120\n'],
    ['commas', 'Freq,SPL (dB),Phase\n# deg\n20.5,80.25,170\n1000,88,-5.5\n20000,79.5,-120'],
    ['commas and spaces', 'Freq, dB, Phase (deg)\n20.5, 80.25, 170\n1000, 88, -5.5\n20000, 79.5, -120'],
    ['semicolons with decimal commas', 'Hz;dB;deg\r\n20,5;80,25;170\r\n1000;88;-5,5\r\n20000;79,5;-120\r\n'],
    ['tabs with decimal commas', 'Hz\tdB\tdeg\n20,5\t80,25\t170\n1000,0\t88,0\t-5,5\n20000,0\t79,5\t-120,0'],
    ['spaces with decimal commas', '* dB, phase in deg\n20,5 80,25 170\n1000 88 -5,5\n20000 79,5 -120'],
    ['decimal commas and column commas', 'Hz dB deg\n20,5, 80,25, 170\n1000, 88, -5,5\n20000, 79,5, -120'],
    ['a frame of strokes', '| Hz | dB | deg |\n| 20.5 | 80.25 | 170 |\n| 1000 | 88 | -5.5 |\n| 20000 | 79.5 | -120 |'],
    ['uneven spaces', '   Hz   dB   deg\n   20.5   80.25   170\n 1000     88      -5.5   \n20000 79.5\t-120'],
    ['quotation marks', '"Hz","dB","deg"\n"20.5","80.25","170"\n"1000","88","-5.5"\n"20000","79.5","-120"'],
    ['a byte-order mark and old line ends', '\ufeffHz\tdB\tdeg\r20.5\t80.25\t170\r1000\t88\t-5.5\r20000\t79.5\t-120'],
    ['powers of ten', '% Hz dB deg\n2.05E+01 8.025e1 1.70e+02\n1.0D+03 88 -5.5\n2e4 79.5 -120'],
    ['kilohertz', 'f [kHz]; level [dB]; phase [deg]\n0.0205; 80.25; 170\n1.0; 88; -5.5\n20; 79.5; -120'],
    ['thousands with commas', 'Hz\tdB\tdeg\n20.5\t80.25\t170\n1,000\t88\t-5.5\n20,000\t79.5\t-120'],
    [
      'another order of columns',
      'Phase (deg)\tFreq (Hz)\tLevel (dB)\n170\t20.5\t80.25\n-5.5\t1000\t88\n-120\t20000\t79.5',
    ],
    ['a true minus sign', 'Hz dB deg\n20.5 80.25 170\n1000 88 −5.5\n20000 79.5 −120'],
    ['words behind the numbers', 'Hz dB deg\n20.5 80.25 170 low\n1000 88 -5.5 mid\n20000 79.5 -120 high'],
  ])('reads %s without a note', (_, text) => {
    const curve = read(text);
    expect(codesOf(curve)).toEqual([]);
    expect(curve).toMatchObject({ quantity: 'response', quantityGuessed: false, sourceName: 'a.dat' });
    expect(curve.magnitudes).toEqual(wanted.magnitudes);
    expect(curve.phasesDeg).toEqual(wanted.phasesDeg);
    for (const [i, f] of wanted.frequenciesHz.entries()) expect(curve.frequenciesHz[i]).toBeCloseTo(f, 9);
  });

  it('takes frequencies below 1 as kilohertz where no unit is named, and says so', () => {
    const guessed = read('dB\n0.02 88\n1 89\n20 80');
    expect(codesOf(guessed)).toEqual(['measured.khz-guessed']);
    expect(guessed.frequenciesHz).toEqual([20, 1000, 20000]);
    expect(read('Hz dB\n0.5 88\n1 89\n20 80').frequenciesHz).toEqual([0.5, 1, 20]);
  });

  it('reads radians as degrees', () => {
    expect(read('Hz dB rad\n20 88 3.14159265\n40 88 -1').phasesDeg![0]).toBeCloseTo(180, 6);
    const named = read('Freq Z Phase\n20 6 0.2\n40 8 -0.7');
    expect(codesOf(named)).toEqual(['measured.phase-unit-guessed']);
    expect(named.phasesDeg![1]).toBeCloseTo(-40.107, 3);
  });

  it('tells an impedance from a response by words, else by its numbers, and says that it guessed', () => {
    expect(read('Frequency Impedance\n20 6\n40 7')).toMatchObject({ quantity: 'impedance', quantityGuessed: false });
    expect(read('* Ω\n20 86\n40 87').quantity).toBe('impedance');
    const guessed = read('20 6.2\n40 31\n80 7');
    expect(guessed).toMatchObject({ quantity: 'impedance', quantityGuessed: true });
    expect(codesOf(guessed)).toEqual([GUESSED]);
    expect(word(guessed.notes[0]!).sentence).toContain('an impedance in ohm');
    expect(read('20 86\n40 91\n80 -7').quantity).toBe('response');
  });

  it('guesses an unnamed third column, and leaves out what is no phase', () => {
    const phase = read('dB\n20 88 -170\n40 89 30');
    expect(codesOf(phase)).toEqual(['measured.third-column-guessed']);
    expect(phase.phasesDeg).toEqual([-170, 30]);
    const coherence = read('dB\n20 88 0.99\n40 89 0.8');
    expect(codesOf(coherence)).toEqual(['measured.third-column-guessed', 'measured.columns-left-out']);
    expect(coherence.phasesDeg).toBeNull();
  });

  it('sorts, merges repeats by their mean and says so', () => {
    const curve = read('Hz dB deg\n80 90 175\n40 88 0\n80 92 -175\n20 87 3');
    expect(curve.frequenciesHz).toEqual([20, 40, 80]);
    expect(curve.magnitudes).toEqual([87, 88, 91]);
    // 175 and -175 degrees are ten degrees apart, round 180.
    expect(curve.phasesDeg![2]).toBeCloseTo(180, 9);
    expect(codesOf(curve)).toEqual(['measured.sorted', 'measured.repeats-merged']);
    expect(curve.notes[1]!.values).toEqual({ count: 1 });
  });

  it('leaves out 0 Hz, impossible magnitudes and unreadable lines, each with its line', () => {
    const curve = read('Hz ohm\n0 6\n20 6\n30 0\n40 NaN\n50 7\n60 8\n70 8\n80 8\n90 8\n');
    expect(curve.frequenciesHz).toEqual([20, 50, 60, 70, 80, 90]);
    expect(curve.notes.map((n) => [n.code, n.place.line])).toEqual([
      ['measured.lines-left-out', 5],
      ['measured.frequency-not-positive', 2],
      ['measured.impossible-magnitude', 4],
    ]);
    expect(word(curve.notes[0]!).sentence).toBe(
      '1 line could not be read like the others, first in line 5, and stayed out.',
    );
  });

  it('says which comma it took where two readings are possible', () => {
    const thousands = read('dB\n1,000 88\n1,250 89\n20,000 90');
    expect(thousands.frequenciesHz).toEqual([1000, 1250, 20000]);
    expect(codesOf(thousands)).toEqual(['measured.comma-guessed']);
    const decimals = read('dB\n20,000\t88,125\n25,000\t89,250\n16000,000\t89,250');
    expect(decimals.frequenciesHz).toEqual([20, 25, 16000]);
    expect(codesOf(decimals)).toEqual([]);
    // 20 kHz to 100 kHz could be, 88 thousand decibels cannot.
    const loud = read('dB\n20,000\t88,125\n31,500\t89,250\n100,000\t90,000');
    expect(loud.magnitudes).toEqual([88.125, 89.25, 90]);
    expect(word(loud.notes[0]!).sentence).toContain('a decimal comma');
  });

  it('thins what is more than the document holds', () => {
    const rows = Array.from({ length: 45000 }, (_, i) => `${i + 1}\t${80 + (i % 7)}`);
    const curve = read(['Hz\tdB', ...rows].join('\n'));
    expect(curve.frequenciesHz).toHaveLength(15000);
    expect(curve.notes[0]).toMatchObject({ code: 'measured.thinned', values: { every: 3, count: 45000 } });
  });

  it.each([
    ['', 'measured.empty', undefined],
    [' \n\n ', 'measured.empty', undefined],
    ['a\0b', 'measured.not-text', undefined],
    ['just words\nand more', 'measured.no-numbers', 1],
    ['{"format": 1}', 'measured.no-numbers', 1],
    ['20 a\n30 b', 'measured.no-numbers', 1],
    ['x\n20\n30\n', 'measured.one-column', 2],
    ['Hz dB\n20 88', 'measured.too-few', undefined],
    ['Hz ohm\n20 -8\n30 -7', 'measured.too-few', undefined],
    ['20,5,88,1\n31,5,89,2', 'measured.ambiguous-commas', 1],
    ['1,000.0,88.1\n20,88\n30,89', 'measured.uneven-commas', 1],
    ['dB\n88 20\n85 25\n89 31.5\n87 40\n88 50', 'measured.columns-swapped', 2],
    ['f re im\n20 1 2\n30 2 3', 'measured.real-imaginary', undefined],
    ['f (Hz)\tp (Pa)\n20\t0.1\n30\t0.2', 'measured.linear-magnitude', undefined],
    ['f (Hz)\tphase (deg)\n20\t1\n30\t2', 'measured.no-magnitude', undefined],
    ['Hz dB\n20 88\n30 x\n40 y\n50 89', 'measured.unreadable-lines', 3],
  ])('refuses %j with %s', (text, code, line) => {
    const { code: got, place } = failure(text);
    expect(got).toBe(code);
    expect(place.line).toBe(line);
    expect(place.id).toBe('a.dat');
  });

  it('does not care what the file is called', () => {
    for (const name of ['x', 'x.frd', 'x.zma', 'x.jpeg', ''])
      expect(readColumns('Hz dB\n20 88\n30 89', name)).toMatchObject({ ok: true, value: { quantity: 'response' } });
  });
});
