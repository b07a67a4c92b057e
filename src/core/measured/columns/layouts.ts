/** One way of reading a line: what stands between columns, and what between whole and fraction. */
export interface Layout {
  readonly name: 'marks-point' | 'marks-comma' | 'spaces-point' | 'spaces-comma' | 'commas-point';
  /** Numbers from the start of the line up to the first field that is none. */
  read(text: string): readonly number[];
}

const WITH_POINT = /^[+-]?(?:\d{1,3}(?:,\d{3})+|\d*)(?:\.\d*)?(?:[eEdD][+-]?\d{1,3})?$/;
const WITH_COMMA = /^[+-]?(?:\d{1,3}(?:\.\d{3})+(?=,)|\d*)(?:,\d*)?(?:[eEdD][+-]?\d{1,3})?$/;
const HAS_LEADING_DIGIT = /^[+-]?[.,]?\d/;

const withPoint = (field: string): number =>
  WITH_POINT.test(field) && HAS_LEADING_DIGIT.test(field)
    ? Number(field.replaceAll(',', '').replace(/d/i, 'e'))
    : Number.NaN;
const withComma = (field: string): number =>
  WITH_COMMA.test(field) && HAS_LEADING_DIGIT.test(field)
    ? Number(field.replaceAll('.', '').replace(',', '.').replace(/d/i, 'e'))
    : Number.NaN;

const leading = (fields: readonly string[], number: (field: string) => number): readonly number[] => {
  const numbers: number[] = [];
  for (const field of fields) {
    const value = number(field.trim());
    if (!Number.isFinite(value)) break;
    numbers.push(value);
  }
  return numbers;
};
const byMarks = (text: string) => text.split(/[;|\t]/);
/** A comma before a space ends a column. */
const bySpaces = (text: string) => text.split(/,?\s+/);
const byCommas = (text: string) => text.split(',');

const layout = (
  name: Layout['name'],
  split: (text: string) => readonly string[],
  number: (field: string) => number,
): Layout => ({ name, read: (text) => leading(split(text), number) });

/** All layouts, the one to be preferred first: ; | and tab separate more surely than spaces, and these than commas. */
export const LAYOUTS: readonly Layout[] = [
  layout('marks-point', byMarks, withPoint),
  layout('marks-comma', byMarks, withComma),
  layout('spaces-point', bySpaces, withPoint),
  layout('spaces-comma', bySpaces, withComma),
  layout('commas-point', byCommas, withPoint),
];
