import type { Place, ProblemValues, Wording, WordingByCode } from './problem.ts';

const wording = (sentence: string, remedy: string): Wording => ({ sentence, remedy });
const inFile = ({ id }: Place): string => (id === undefined ? 'The text' : `“${id}”`);
const line = ({ line: number }: Place): string => (number === undefined ? 'A line' : `Line ${number}`);
const atLine = ({ line: number }: Place): string => (number === undefined ? '' : `, first in line ${number}`);
const counted = ({ count }: ProblemValues, what: string): string => (count === 1 ? `1 ${what}` : `${count} ${what}s`);
const CURVES: ReadonlyMap<string, string> = new Map([
  ['response', 'a response in dB'],
  ['impedance', 'an impedance in ohm'],
]);
const curve = (quantity: unknown): string => CURVES.get(String(quantity)) ?? 'a curve';
const COLUMNS =
  'Give a text with two or three columns: frequency in Hz, level in dB or impedance in ohm, phase in degrees.';
const THIRD_COLUMN: ReadonlyMap<string, string> = new Map([
  ['degrees', 'phase in degrees'],
  ['radians', 'phase in radians'],
  ['ignored', 'no phase and left out, since it lies between 0 and 1'],
]);
const LAYOUTS: ReadonlyMap<string, string> = new Map([
  ['marks-point', 'a separator between thousands'],
  ['spaces-point', 'a separator between thousands'],
  ['marks-comma', 'a decimal comma'],
  ['spaces-comma', 'a decimal comma'],
  ['commas-point', 'a separator between columns'],
]);

/** Sentences of the codes that begin with `measured.`: reading and preparing measured curves. */
export const measuredWording: WordingByCode = {
  'measured.too-large': (_, p) =>
    wording(`${inFile(p)} has more than 20 million characters.`, 'Export it with fewer points.'),
  'measured.not-text': (_, p) =>
    wording(
      `${inFile(p)} is not plain text.`,
      'Export the measurement as text, and save it as UTF-8 if you are asked.',
    ),
  'measured.empty': (_, p) => wording(`${inFile(p)} is empty.`, COLUMNS),
  'measured.no-numbers': (_, p) => wording(`${inFile(p)} has no line with two numbers at its beginning.`, COLUMNS),
  'measured.one-column': (_, p) =>
    wording(`${line(p)} of ${inFile(p)} has one number where frequency and magnitude should stand.`, COLUMNS),
  'measured.unreadable-lines': (v, p) =>
    wording(
      `${line(p)} of ${inFile(p)}, “${v.text}”, cannot be read like the lines before it, and ${counted(v, 'line')} in all cannot.`,
      'Correct these lines, or export the measurement again with the same columns in every line.',
    ),
  'measured.ambiguous-commas': (_, p) =>
    wording(
      `${line(p)} of ${inFile(p)} can be read in two ways, since its commas may stand in numbers or between them.`,
      'Use decimal points, or separate the columns by semicolons or tabs.',
    ),
  'measured.uneven-commas': (_, p) =>
    wording(
      `${line(p)} of ${inFile(p)} has another number of commas than the lines before it, so its columns are not certain.`,
      'Leave out commas between thousands, or separate the columns by semicolons or tabs.',
    ),
  'measured.columns-swapped': (_, p) =>
    wording(
      `From line ${p.line ?? 1} on, the first column of ${inFile(p)} goes up and down and the second one ascends, as frequencies do.`,
      'Put the frequency into the first column, or name the columns in a header line.',
    ),
  'measured.real-imaginary': (_, p) =>
    wording(`${inFile(p)} holds real and imaginary parts.`, 'Export magnitude and phase instead.'),
  'measured.linear-magnitude': (_, p) =>
    wording(`${inFile(p)} holds linear magnitudes, not dB or ohm.`, 'Export the level in dB, or the impedance in ohm.'),
  'measured.no-magnitude': (_, p) =>
    wording(`The header of ${inFile(p)} names no column of levels or impedances.`, COLUMNS),
  'measured.too-few': (v, p) =>
    wording(`${inFile(p)} has ${counted(v, 'usable point')}; a curve needs 2 or more.`, COLUMNS),
  'measured.comma-guessed': (v, p) =>
    wording(
      `The commas from line ${p.line ?? 1} on were taken as ${LAYOUTS.get(String(v.layout)) ?? 'separators'}, because the numbers make more sense so.`,
      'Look at the first and last frequency, and export with decimal points if they are wrong.',
    ),
  'measured.lines-left-out': (v, p) =>
    wording(
      `${counted(v, 'line')} could not be read like the others${atLine(p)}, and stayed out.`,
      'Look at this line in the file if points are missing.',
    ),
  'measured.quantity-guessed': (v) =>
    wording(
      `The file does not say what its magnitudes are; they were taken as ${curve(v.quantity)}.`,
      'Change it with the curve if this is wrong.',
    ),
  'measured.khz-guessed': () =>
    wording(
      'The frequencies begin below 1 and end below 100, so they were taken as kHz.',
      'Write Hz or kHz above the column if this is wrong.',
    ),
  'measured.third-column-guessed': (v) =>
    wording(
      `The file does not say what its third column is; it was taken as ${THIRD_COLUMN.get(String(v.unit)) ?? 'phase'}.`,
      'Name the columns in a header line if this is wrong.',
    ),
  'measured.phase-unit-guessed': (v) =>
    wording(
      v.unit === 'radians'
        ? 'The header does not give the unit of the phase; no value passes half a turn in radians (±3.14), so all were read as radians and turned into degrees.'
        : 'The header does not give the unit of the phase; some values pass half a turn in radians (±3.14), so all were read as degrees.',
      'Write deg or rad into the header if this is wrong.',
    ),
  'measured.columns-left-out': (v) =>
    wording(
      `${counted(v, 'further column')} stayed out.`,
      'Put frequency, magnitude and phase first if one of them is missing.',
    ),
  'measured.frequency-not-positive': (v, p) =>
    wording(`${counted(v, 'point')} at or below 0 Hz stayed out${atLine(p)}.`, 'Nothing needs to be done.'),
  'measured.impossible-magnitude': (v, p) =>
    wording(
      `${counted(v, 'point')} with an impedance of 0 or below, or a level beyond ±500 dB, stayed out${atLine(p)}.`,
      'Look at this line in the file if points are missing.',
    ),
  'measured.sorted': () =>
    wording('The frequencies were not in ascending order and were sorted.', 'Nothing needs to be done.'),
  'measured.repeats-merged': (v) =>
    wording(
      `${counted(v, 'point')} repeated a frequency; the mean was taken.`,
      'If the file holds several curves one after the other, give one file for each.',
    ),
  'measured.thinned': (v) =>
    wording(
      `The file has ${v.count} points; every ${v.every}th was kept.`,
      'Export with fewer points if fine detail at low frequencies matters.',
    ),
  'measured.minimum-phase': (v) =>
    wording(
      `The curve has no phase; ${v.quantity === 'impedance' ? 'an impedance' : 'a response'} of minimum phase was assumed.`,
      'Measure with phase if the driver is all but minimum phase, or if the curve ends near the crossover.',
    ),
  'measured.delay-removed': (v) =>
    wording(
      `${(Number(v.delayS) * 1000).toFixed(2).replace('-', '−')} ms of delay were taken out of the measured phase.`,
      'Where the driver sits in depth comes from its acoustic centre; set it there.',
    ),
};
