import type { WordingByCode } from './problem.ts';

const UNIT_EXAMPLES: Readonly<Record<string, string>> = { capacitor: '6.8 µF', inductor: '0.47 mH', resistor: '8.2 Ω' };

/** Sentences of the codes that begin with `drawer.`: the file with the list of the parts you have. */
export const drawerWording: WordingByCode = {
  'drawer.too-large': (v) => ({
    sentence: `The list of the parts you have is longer than the ${v.most} lines that are read.`,
    remedy: 'Split it, or leave out what you do not have.',
  }),
  'drawer.no-header': () => ({
    sentence: 'The list of the parts you have has no first line with the names of its columns.',
    remedy: 'Begin it with: kind,value,tolerance,resistance,rating,price,count,note.',
  }),
  'drawer.unknown-column': (v, { line }) => ({
    sentence: `Line ${line} names a column “${v.text}”, which is not known.`,
    remedy: 'Use kind, value, tolerance, resistance, rating, price, count and note, each once at most.',
  }),
  'drawer.missing-column': (v, { line }) => ({
    sentence: `Line ${line} does not name the column “${v.column}”.`,
    remedy: 'Add it: kind and value are needed, the others may be left out.',
  }),
  'drawer.quotes': (_v, { line }) => ({
    sentence: `In line ${line} a quotation mark opens or closes where none belongs.`,
    remedy: 'Put the whole cell in quotation marks, and write a mark inside it twice.',
  }),
  'drawer.unclosed': (_v, { line }) => ({
    sentence: `The quotation mark that opens in line ${line} is never closed.`,
    remedy: 'Close it at the end of its cell.',
  }),
  'drawer.cells': (v, { line }) => ({
    sentence: `Line ${line} has ${v.count} cells where the first line has ${v.wanted}.`,
    remedy: 'Write one cell for each column; put a cell with a comma in it in quotation marks.',
  }),
  'drawer.kind': (v, { line }) => ({
    sentence: `Line ${line} is of the kind “${v.text}”, which is not known.`,
    remedy: 'Write resistor, capacitor or inductor.',
  }),
  'drawer.no-unit': (v, { line }) => ({
    sentence: `Line ${line} gives the value ${v.text} without a unit.`,
    remedy: `Write it with its unit, such as ${UNIT_EXAMPLES[String(v.kind)] ?? '8.2 Ω'}.`,
  }),
  'drawer.cell': (v, { line }) => ({
    sentence: `Line ${line}: “${v.text}” cannot be read as ${v.column}.`,
    remedy: `Write it like ${v.example}.`,
  }),
};
