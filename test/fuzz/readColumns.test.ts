import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readColumns } from '../../src/core/measured/readColumns.ts';
import { word } from '../../src/core/messages/word.ts';

/** What holds for every text: a curve in order or one worded problem, and never an exception. */
function checkAnything(text: string): boolean {
  const result = readColumns(text, 'any');
  if (!result.ok) return result.problems.length === 1 && word(result.problems[0]!).remedy !== '';
  const { frequenciesHz, magnitudes, phasesDeg, notes, quantity } = result.value;
  const n = frequenciesHz.length;
  return (
    n >= 2 &&
    n <= 20000 &&
    magnitudes.length === n &&
    (phasesDeg === null || (phasesDeg.length === n && phasesDeg.every(Number.isFinite))) &&
    frequenciesHz.every((f, i) => Number.isFinite(f) && f > (i === 0 ? 0 : frequenciesHz[i - 1]!)) &&
    magnitudes.every((m) => Number.isFinite(m) && (quantity === 'response' || m > 0)) &&
    notes.every((note) => !word(note).sentence.startsWith('Something is wrong'))
  );
}

describe('readColumns on anything', () => {
  it('answers random text (seed 61)', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), checkAnything), { seed: 61, numRuns: 1000 });
  });

  it('answers a soup of what measurement files are made of (seed 62)', () => {
    const piece = fc.constantFrom(
      ...'0123456789.,;|-+eE#*"% ',
      '\t',
      '\n',
      '\r\n',
      '\ufeff',
      '//',
      'Hz',
      'kHz',
      'dB',
      'ohm',
      'Ω',
      'deg',
      'rad',
      'phase',
      'freq',
      're',
      'im',
      'NaN',
      '1e999',
      '-inf',
      '20',
      '88.1',
      '1,000',
      '20,5',
      '0',
      '−5',
      '__proto__',
      '\0',
    );
    const soup = fc.array(piece, { maxLength: 120 }).map((pieces) => pieces.join(''));
    fc.assert(fc.property(soup, checkAnything), { seed: 62, numRuns: 4000 });
  });

  it('answers rows of numbers in a random dress, some of them broken (seed 63)', () => {
    const number = fc.oneof(
      { weight: 30, arbitrary: fc.double({ min: -20, max: 30000, noNaN: true }).map((x) => x.toFixed(2)) },
      { weight: 10, arbitrary: fc.integer({ min: 1, max: 30000 }).map(String) },
      { weight: 1, arbitrary: fc.constantFrom('', 'x', 'NaN', '1e400', '0', '1 2') },
    );
    const rows = fc
      .integer({ min: 1, max: 4 })
      .chain((columns) => fc.array(fc.array(number, { minLength: columns, maxLength: columns }), { maxLength: 40 }));
    const separator = fc.constantFrom('\t', ',', ';', ' ', ', ', ' | ', '  ');
    let curves = 0;
    fc.assert(
      fc.property(rows, separator, fc.boolean(), (table, between, comma) => {
        const text = table.map((row) => row.join(between)).join('\n');
        const dressed = comma ? text.replaceAll('.', ',') : text;
        if (readColumns(dressed, 'any').ok) curves++;
        return checkAnything(dressed);
      }),
      { seed: 63, numRuns: 2000 },
    );
    expect(curves).toBeGreaterThan(200);
  });

  it('never changes a value in silence: well-formed rows come back as they were written (seed 64)', () => {
    const point = fc.tuple(
      fc.integer({ min: 1, max: 3000 }),
      fc.integer({ min: -3000, max: 12000 }),
      fc.integer({ min: -18000, max: 18000 }),
    );
    const dress = fc.constantFrom(
      { between: '\t', comma: false },
      { between: ';', comma: true },
      { between: '\t', comma: true },
      { between: ' ', comma: true },
      { between: ' ', comma: false },
      { between: ',', comma: false },
      { between: ', ', comma: false },
    );
    fc.assert(
      fc.property(
        fc.array(point, { minLength: 2, maxLength: 30 }),
        dress,
        fc.boolean(),
        (points, { between, comma }, withPhase) => {
          let tenths = 0;
          const rows = points.map(([step, level, phase]) => {
            tenths += step;
            const numbers = [tenths / 10, level / 100, ...(withPhase ? [phase / 100] : [])];
            return numbers.map((x, i) => x.toFixed(i === 0 ? 1 : 2));
          });
          const header = withPhase ? ['Hz', 'dB', 'deg'] : ['Hz', 'dB'];
          const text = [header, ...rows].map((row) => row.join(between)).join('\n');
          const result = readColumns(comma ? text.replaceAll('.', ',') : text, 'any');
          if (!result.ok) return false;
          const { frequenciesHz, magnitudes, phasesDeg } = result.value;
          return rows.every(
            ([f, m, p], i) =>
              frequenciesHz[i] === Number(f) &&
              magnitudes[i] === Number(m) &&
              (p === undefined || phasesDeg?.[i] === Number(p)),
          );
        },
      ),
      { seed: 64, numRuns: 1000 },
    );
  });
});
