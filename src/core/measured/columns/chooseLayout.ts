import { fail, type Place, problem, type Result, succeed } from '../../messages/problem.ts';
import { LAYOUTS, type Layout } from './layouts.ts';
import type { SourceLine } from './sourceLines.ts';

/** A line with as many numbers as most others. */
export interface Row {
  readonly line: number;
  readonly numbers: readonly number[];
}

export interface Table {
  readonly layout: Layout['name'];
  readonly rows: readonly Row[];
  readonly columnCount: number;
  /** Lines that begin with a number but do not have as many numbers as the rows. */
  readonly unread: readonly SourceLine[];
  /** The text could be read in another way too, and plausibility decided. */
  readonly guessed: boolean;
}

/** The number of numbers that most lines have, 2 at least; 0 when no line has two. */
function usualCount(counts: readonly number[]): number {
  const often = new Map<number, number>();
  for (const count of counts) if (count >= 2) often.set(count, (often.get(count) ?? 0) + 1);
  return [...often].reduce((best, [count, times]) => (times > (often.get(best) ?? 0) ? count : best), 0);
}

function tableIn(layout: Layout, lines: readonly SourceLine[]): Table {
  const read = lines.map(({ line, text }) => ({ line, numbers: layout.read(text) }));
  const columnCount = usualCount(read.map(({ numbers }) => numbers.length));
  return {
    layout: layout.name,
    columnCount,
    rows: columnCount === 0 ? [] : read.filter(({ numbers }) => numbers.length === columnCount),
    unread: lines.filter((_, i) => read[i]!.numbers.length !== columnCount),
    guessed: false,
  };
}

/** How odd a reading is: frequencies that fall, that go beyond hearing or stop below it, magnitudes beyond belief. */
function oddness({ rows }: Table): number {
  let falls = 0;
  let highest = 0;
  let greatest = 0;
  for (const [i, { numbers }] of rows.entries()) {
    if (i > 0 && numbers[0]! < rows[i - 1]!.numbers[0]!) falls++;
    highest = Math.max(highest, numbers[0]!);
    greatest = Math.max(greatest, Math.abs(numbers[1]!));
  }
  return falls / rows.length + (highest > 200_000 ? 1 : 0) + (highest < 100 ? 0.5 : 0) + (greatest > 1000 ? 1 : 0);
}

const sameNumbers = (a: Table, b: Table): boolean =>
  a.columnCount === b.columnCount && a.rows.every((row, i) => row.numbers.every((x, j) => x === b.rows[i]?.numbers[j]));

/**
 * Reads the lines in every layout and takes the one in which most lines are rows. Where two layouts read as much and
 * differ, the less odd reading is taken and marked as guessed; where both are alike plausible it is a Problem.
 */
export function chooseLayout(lines: readonly SourceLine[], file: Place): Result<Table> {
  const tables = LAYOUTS.map((layout) => tableIn(layout, lines));
  const most = Math.max(...tables.map(({ rows }) => rows.length));
  const first: Place = { ...file, line: lines[0]?.line ?? 1 };
  if (most === 0) {
    const single = lines.some(
      ({ text }) => /^\S+$/.test(text) && LAYOUTS.some((layout) => layout.read(text).length === 1),
    );
    return fail(problem(single ? 'measured.one-column' : 'measured.no-numbers', first));
  }
  // Of layouts that read as many lines, those that read the most columns: the others stopped at a field they cannot read.
  const widest = Math.max(...tables.map(({ rows, columnCount }) => (rows.length === most ? columnCount : 0)));
  const likely = tables.filter(({ rows, columnCount }) => rows.length === most && columnCount === widest);
  const [best, next] = likely
    .filter((table, i) => likely.findIndex((other) => sameNumbers(table, other)) === i)
    .map((table) => ({ table, odd: oddness(table) }))
    .sort((a, b) => a.odd - b.odd);
  const { table } = best!;
  const row: Place = { ...file, line: table.rows[0]!.line };
  if (next !== undefined && next.odd === best!.odd) return fail(problem('measured.ambiguous-commas', row));
  if (table.layout === 'commas-point') {
    const uneven = table.unread.find(({ text }) => LAYOUTS.at(-1)!.read(text).length >= 2);
    if (uneven !== undefined) return fail(problem('measured.uneven-commas', { ...file, line: uneven.line }));
    const text = lines.find(({ line }) => line === row.line)!.text;
    if (table.columnCount >= 4 && table.columnCount % 2 === 0 && lines.every((line) => !line.text.includes('.')))
      return fail(problem('measured.ambiguous-commas', row, { text }));
  }
  return succeed({ ...table, guessed: next !== undefined });
}
