import { fail, type Problem, type ProblemValues, problem, type Result, succeed } from '../../messages/problem.ts';
import { parseQuantityNow } from '../../units/parseQuantityNow.ts';
import type { QuantityKind } from '../../units/quantityKind.ts';
import { type CsvRecord, csvRecords } from './csvRecords.ts';
import { DRAWER_COLUMNS, type DrawerColumn, type DrawerKind, type DrawerPart, KIND_QUANTITIES } from './drawerPart.ts';

const MOST_LINES = 5000;
const LONGEST_NOTE = 200;
const VALUE_UNITS: Readonly<Record<DrawerKind, string>> = { resistor: 'Ω', capacitor: 'F', inductor: 'H' };
const PLAIN_NUMBER = /^\s*[+-]?[\d.,]+(?:[eE][+-]?\d+)?\s*$/;

/**
 * Reads a parts drawer from comma-separated text (or semicolons, where the first line has them): a first line with the names of the
 * columns, in any order, `kind` and `value` among them; then a part a line.
 *
 * Values of capacitors and coils carry a unit or a marking (6.8 µF, 2u2), resistors may be plain ohms; tolerance in percent, rating in W, V or A by the kind;
 * an empty cell is not stated. Nothing is guessed or left out: every line that is not understood is a problem with its number (`drawer.…`), and then there
 * is no drawer.
 * @example readDrawer('kind,value,count\ncapacitor,6.8 µF,2\n')
 */
export function readDrawer(text: string): Result<DrawerPart[]> {
  const firstLine = text.split(/\r|\n/, 1)[0] ?? '';
  const records = csvRecords(text, firstLine.includes(';') && !firstLine.includes(',') ? ';' : ',');
  if (!records.ok) return records;
  const [header, ...rows] = records.value;
  if (header === undefined) return fail(problem('drawer.no-header', { kind: 'document' }));
  if (rows.length > MOST_LINES) return fail(problem('drawer.too-large', { kind: 'document' }, { most: MOST_LINES }));
  const columns = readHeader(header);
  if (!columns.ok) return columns;
  const problems: Problem[] = [];
  const parts = rows.flatMap((row) => {
    const part = readRow(row, columns.value);
    if (part.ok) return [part.value];
    problems.push(...part.problems);
    return [];
  });
  return problems.length > 0 ? fail(...problems) : succeed(parts);
}

function readHeader({ line, cells }: CsvRecord): Result<DrawerColumn[]> {
  const names = cells.map((cell) => cell.trim().toLowerCase());
  const isColumn = (name: string): name is DrawerColumn => DRAWER_COLUMNS.some((column) => column === name);
  if (!names.some(isColumn)) return fail(problem('drawer.no-header', { kind: 'line', line }));
  const problems: Problem[] = [];
  const columns = names.filter((name, n): name is DrawerColumn => {
    if (isColumn(name) && names.indexOf(name) === n) return true;
    problems.push(problem('drawer.unknown-column', { kind: 'line', line }, { text: cells[n]!.trim() }));
    return false;
  });
  for (const column of ['kind', 'value'])
    if (!names.includes(column)) problems.push(problem('drawer.missing-column', { kind: 'line', line }, { column }));
  return problems.length > 0 ? fail(...problems) : succeed(columns);
}

function readRow({ line, cells }: CsvRecord, columns: readonly DrawerColumn[]): Result<DrawerPart> {
  const refuse = (code: string, values: ProblemValues): Result<never> =>
    fail(problem(code, { kind: 'line', line }, values));
  if (cells.length !== columns.length) return refuse('drawer.cells', { count: cells.length, wanted: columns.length });
  const cell = (column: DrawerColumn): string => cells[columns.indexOf(column)]?.trim() ?? '';
  const kind = cell('kind').toLowerCase();
  if (kind !== 'resistor' && kind !== 'capacitor' && kind !== 'inductor')
    return refuse('drawer.kind', { text: cell('kind') });
  const quantities = KIND_QUANTITIES[kind];
  if (kind !== 'resistor' && PLAIN_NUMBER.test(cell('value')))
    return refuse('drawer.no-unit', { text: cell('value'), kind });

  const problems: Problem[] = [];
  const read = (column: DrawerColumn, quantity: QuantityKind, unit: string, least: number, example: string) => {
    const text = cell(column).replace(/^± ?/, '');
    if (text === '' && column !== 'value') return null;
    const parsed = parseQuantityNow(text, quantity, unit);
    if (parsed !== 'needs-expression' && parsed.ok && parsed.value >= least) return parsed.value;
    problems.push(problem('drawer.cell', { kind: 'line', line }, { column, text: cell(column), example }));
    return null;
  };
  const above0 = Number.MIN_VALUE;
  const value = read('value', quantities.value, VALUE_UNITS[kind], above0, EXAMPLES[kind].value);
  const tolerance = read('tolerance', 'ratio', '%', 0, '5 %');
  const resistanceOhm = read('resistance', 'resistance', 'Ω', 0, '0.25 Ω');
  const rating = read('rating', quantities.rating, quantities.ratingUnit, above0, EXAMPLES[kind].rating);
  const price = read('price', 'plain', '', 0, '4.50');
  const count = read('count', 'plain', '', 0, '2');
  const refused = (column: DrawerColumn, example: string) =>
    problems.push(problem('drawer.cell', { kind: 'line', line }, { column, text: cell(column).slice(0, 40), example }));
  if (count !== null && !Number.isInteger(count)) refused('count', '2');
  if (tolerance !== null && tolerance >= 1) refused('tolerance', '5 %');
  if (cell('note').length > LONGEST_NOTE) refused('note', `at most ${LONGEST_NOTE} characters`);
  if (problems.length > 0 || value === null) return fail(...problems);
  return succeed({ kind, value, tolerance, resistanceOhm, rating, price, count, note: cell('note') });
}

const EXAMPLES: Readonly<Record<DrawerKind, { readonly value: string; readonly rating: string }>> = {
  resistor: { value: '8.2 Ω', rating: '10 W' },
  capacitor: { value: '6.8 µF', rating: '250 V' },
  inductor: { value: '0.47 mH', rating: '5 A' },
};
