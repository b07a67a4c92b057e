import { fail, problem, type Result, succeed } from '../../messages/problem.ts';

/** A record of a comma-separated text with the line that it begins in, counted from 1. */
export interface CsvRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

/**
 * Splits a text into records as RFC 4180 says: cells between `separator`s, in quotation marks where they hold one, a quotation mark or a line end; marks doubled
 * inside. Line ends of any kind; empty lines are passed over; a byte-order mark is taken off.
 *
 * Problems with the line: `drawer.quotes` for a mark out of place, `drawer.unclosed`. Source: Y. Shafranovich, RFC 4180, 2005.
 * @example csvRecords('a,"b ""c"""\r\n', ',') // [{ line: 1, cells: ['a', 'b "c"'] }]
 */
export function csvRecords(text: string, separator: ',' | ';'): Result<CsvRecord[]> {
  const source = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const records: CsvRecord[] = [];
  let cells: string[] = [];
  let line = 1;
  let begins = 1;
  let at = 0;
  while (at < source.length) {
    const quoted = source[at] === '"';
    const opened = line;
    let cell = '';
    if (quoted) {
      let end = at + 1;
      for (;;) {
        const mark = source.indexOf('"', end);
        if (mark < 0) return fail(problem('drawer.unclosed', { kind: 'line', line: opened }));
        cell += source.slice(end, mark);
        end = mark + 1;
        if (source[end] !== '"') break;
        cell += '"';
        end++;
      }
      line += cell.split('\n').length - 1;
      at = end;
    } else {
      const start = at;
      while (at < source.length && source[at] !== separator && source[at] !== '\n') at++;
      cell = source.slice(start, at);
    }
    const next = source[at];
    const ends = next === undefined || next === '\n';
    if ((!quoted && cell.includes('"')) || !(ends || next === separator))
      return fail(problem('drawer.quotes', { kind: 'line', line }));
    cells.push(cell);
    at++;
    if (!ends) {
      // A separator at the very end leaves an empty cell behind it.
      if (at === source.length) cells.push('');
      else continue;
    }
    if (cells.length > 1 || cells[0] !== '' || quoted) records.push({ line: begins, cells });
    cells = [];
    line++;
    begins = line;
  }
  if (cells.length > 0) records.push({ line: begins, cells });
  return succeed(records);
}
