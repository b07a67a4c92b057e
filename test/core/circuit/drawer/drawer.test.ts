import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  csvRecords,
  type DrawerPart,
  nearestInDrawer,
  readDrawer,
  writeDrawer,
} from '../../../../src/core/circuit/drawer/index.ts';
import { word } from '../../../../src/core/messages/word.ts';

const HEADER = 'kind,value,tolerance,resistance,rating,price,count,note\n';
const read = (text: string): DrawerPart[] => {
  const parts = readDrawer(text);
  if (!parts.ok) throw new Error(JSON.stringify(parts.problems));
  return parts.value;
};
/** Codes with their lines of a text that is refused. */
const refusals = (text: string): [string, number | undefined][] => {
  const parts = readDrawer(text);
  return parts.ok ? [] : parts.problems.map(({ code, place }) => [code, place.line]);
};
const part = (fields: Partial<DrawerPart>): DrawerPart => ({
  kind: 'resistor',
  value: 8.2,
  tolerance: null,
  resistanceOhm: null,
  rating: null,
  price: null,
  count: null,
  note: '',
  ...fields,
});

describe('csvRecords', () => {
  const cells = (text: string) => {
    const records = csvRecords(text, ',');
    return records.ok ? records.value.map((record) => record.cells) : records.problems.map(({ code }) => code);
  };
  it('reads the examples of RFC 4180, section 2', () => {
    expect(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx')).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(cells('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
      ['aaa', 'b\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(cells('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]);
  });
  it('keeps empty cells, passes over empty lines and refuses marks out of place', () => {
    expect(cells('\uFEFFa,,\n\n,b,')).toEqual([
      ['a', '', ''],
      ['', 'b', ''],
    ]);
    expect(cells('""')).toEqual([['']]);
    expect(cells('a"b,c')).toEqual(['drawer.quotes']);
    expect(cells('"a" b,c')).toEqual(['drawer.quotes']);
    expect(cells('"a,c')).toEqual(['drawer.unclosed']);
  });
  it('counts lines through cells of several lines', () => {
    const records = csvRecords('a,"b\nc\nd"\ne,f\n', ',');
    expect(records.ok && records.value.map(({ line }) => line)).toEqual([1, 4]);
  });
  it('gives back any cells that were written as the standard says (seed 81)', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', ',', '"', '\n', ' ', 'ö'), maxLength: 6 });
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { maxLength: 5 }), (rows) => {
        const text = rows.map((row) => `${row.map((c) => `"${c.replaceAll('"', '""')}"`).join(',')}\r\n`).join('');
        expect(cells(text)).toEqual(rows);
      }),
      { seed: 81 },
    );
  });
});

describe('readDrawer', () => {
  it('reads units, markings, percent and blanks', () => {
    const text = `${HEADER}capacitor,"6,8 µF",±5 %,20 mΩ,400 V,3.40,2,"film, ""good"""\nresistor,4R7,5,,10,,,\nInductor,0.47 mH,,0.25,6 A,,0,\n`;
    expect(read(text)).toEqual([
      part({
        kind: 'capacitor',
        value: 6.8e-6,
        tolerance: 0.05,
        resistanceOhm: 0.02,
        rating: 400,
        price: 3.4,
        count: 2,
        note: 'film, "good"',
      }),
      part({ value: 4.7, tolerance: 0.05, rating: 10 }),
      part({ kind: 'inductor', value: 0.47e-3, resistanceOhm: 0.25, rating: 6, count: 0 }),
    ]);
  });
  it('takes columns in any order, some of them, and semicolons', () => {
    expect(read('Note;Value;Kind\r\nlast one;10;resistor\r\n')).toEqual([part({ value: 10, note: 'last one' })]);
  });
  it('refuses with the number of each line that it does not understand', () => {
    expect(refusals('')).toEqual([['drawer.no-header', undefined]]);
    expect(refusals('resistor,8.2\n')).toEqual([['drawer.no-header', 1]]);
    expect(refusals('kind,value,colour\n')).toEqual([['drawer.unknown-column', 1]]);
    expect(refusals('kind,kind,value\n')).toEqual([['drawer.unknown-column', 1]]);
    expect(refusals('kind,count\n')).toEqual([['drawer.missing-column', 1]]);
    expect(
      refusals(
        'kind,value,tolerance,count\nresistor,8.2,5 %,1\nvalve,1,,\ncapacitor,6.8,,\nresistor,x,,\nresistor,1,200 %,1.5\nresistor,1\ncapacitor,2 Ω,,\nresistor,-1,,\nresistor,,,\nresistor,3*4,,\n',
      ),
    ).toEqual([
      ['drawer.kind', 3],
      ['drawer.no-unit', 4],
      ['drawer.cell', 5],
      ['drawer.cell', 6],
      ['drawer.cell', 6],
      ['drawer.cells', 7],
      ['drawer.cell', 8],
      ['drawer.cell', 9],
      ['drawer.cell', 10],
      ['drawer.cell', 11],
    ]);
  });
  it('words every refusal with its line', () => {
    const parts = readDrawer('kind,value\nvalve,1\ncapacitor,6.8\nresistor,x\nresistor\n');
    const sentences = parts.ok ? [] : parts.problems.map((problem) => word(problem).sentence);
    expect(sentences).toHaveLength(4);
    sentences.forEach((sentence, n) => {
      expect(sentence).toContain(`ine ${n + 2}`);
    });
  });
});

describe('writeDrawer', () => {
  it('writes what people read', () => {
    expect(writeDrawer([part({ kind: 'capacitor', value: 6.8e-6, tolerance: 0.05, rating: 400, note: 'a, b' })])).toBe(
      'kind,value,tolerance,resistance,rating,price,count,note\r\ncapacitor,6.8 µF,5 %,,400 V,,,"a, b"\r\n',
    );
  });
  it('is read back to the same parts (seed 82)', () => {
    const digits = fc.integer({ min: 1, max: 999_999 });
    const stated = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null });
    const anyPart = fc.record({
      kind: fc.constantFrom('resistor' as const, 'capacitor' as const, 'inductor' as const),
      value: fc.tuple(digits, fc.integer({ min: -15, max: 0 })).map(([n, power]) => Number(`${n}e${power}`)),
      tolerance: stated(fc.integer({ min: 0, max: 99 }).map((n) => Number(`${n}e-2`))),
      resistanceOhm: stated(digits.map((n) => Number(`${n}e-4`))),
      rating: stated(digits.map((n) => Number(`${n}e-2`))),
      price: stated(digits.map((n) => Number(`${n}e-2`))),
      count: stated(fc.integer({ min: 0, max: 500 })),
      note: fc
        .string({ unit: fc.constantFrom('a', ',', '"', '\n', ';', 'ü'), maxLength: 9 })
        .map((note) => note.trim()),
    });
    fc.assert(
      fc.property(fc.array(anyPart, { maxLength: 6 }), (parts) => {
        const back = read(writeDrawer(parts));
        expect(back).toHaveLength(parts.length);
        back.forEach((found, n) => {
          const { tolerance, value, ...rest } = parts[n]!;
          expect(found).toMatchObject(rest);
          // Twelve digits are written.
          expect(found.value / value).toBeCloseTo(1, 11);
          expect(found.tolerance ?? -1).toBeCloseTo(tolerance ?? -1, 12);
        });
      }),
      { seed: 82 },
    );
  });
});

describe('nearestInDrawer', () => {
  const drawer = [
    part({ kind: 'capacitor', value: 6.8e-6, count: 1 }),
    part({ kind: 'capacitor', value: 2.2e-6, count: 1 }),
    part({ kind: 'capacitor', value: 10e-6, count: 0 }),
    part({ kind: 'resistor', value: 9e-6 }),
  ];
  it('joins what is there: 9 µF from 6.8 and 2.2 side by side, not from what has run out', () => {
    const [best] = nearestInDrawer(9e-6, 'capacitor', drawer, { pairs: true, most: 1 });
    expect(best).toMatchObject({ how: 'parallel', parts: [drawer[0], drawer[1]] });
    expect(nearestInDrawer(10e-6, 'capacitor', drawer, { pairs: false, most: 1 })[0]?.parts).toEqual([drawer[0]]);
  });
  it('uses one of a kind once and two of a kind twice', () => {
    const wanted = 13.6e-6;
    expect(nearestInDrawer(wanted, 'capacitor', drawer, { pairs: true, most: 1 })[0]?.value).toBeCloseTo(9e-6, 15);
    const two = [part({ kind: 'capacitor', value: 6.8e-6, count: 2 })];
    expect(nearestInDrawer(wanted, 'capacitor', two, { pairs: true, most: 1 })[0]).toMatchObject({
      values: [6.8e-6, 6.8e-6],
      parts: [two[0], two[0]],
    });
    expect(nearestInDrawer(1, 'inductor', drawer, { pairs: true, most: 3 })).toEqual([]);
  });
});
