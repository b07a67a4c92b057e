import {
  type Finding,
  fail,
  type Place,
  type ProblemValues,
  problem,
  type Result,
  succeed,
} from '../messages/problem.ts';
import { chooseLayout, type Table } from './columns/chooseLayout.ts';
import { type ColumnRoles, columnRoles } from './columns/columnRoles.ts';
import {
  guessPhaseUnit,
  guessQuantity,
  looksLikeKiloHertz,
  looksLikeShare,
  looksSwapped,
} from './columns/guessContent.ts';
import { type CurvePoint, mergeRepeats } from './columns/mergeRepeats.ts';
import { sourceLines } from './columns/sourceLines.ts';
import type { CurveQuantity } from './curveTable.ts';

/** A curve as read from text. Frequencies ascend; lists are of one length, 2 to 20 000. */
export interface ReadCurves {
  readonly quantity: CurveQuantity;
  readonly quantityGuessed: boolean;
  readonly frequenciesHz: number[];
  /** dB for a response, ohm for an impedance. */
  readonly magnitudes: number[];
  readonly phasesDeg: number[] | null;
  readonly sourceName: string;
  /** All that was guessed, left out or changed on the way. */
  readonly notes: readonly Finding[];
}

const MOST_CHARACTERS = 20_000_000;
const MOST_POINTS = 20_000;
const MOST_UNREAD = 0.2;
const LARGEST_DB = 500;

/**
 * Reads columns of frequency, magnitude and optional phase from text: any separator, decimal point or comma, comment
 * lines, headers with unit words, any line ends and order, whatever the file is called.
 *
 * Levels stay dB, impedances ohm, phases come as degrees. What is not said in a header is guessed, and each guess, each
 * line left out and each change stands in `notes`; of points at one frequency the mean is taken. Fails with one sentence
 * that names the line where the text is no such table or can be read in two ways; never throws on any text.
 *
 * Example: `readColumns('20,5; 88,1\n40; 89', 'a.txt')` gives 20.5 and 40 Hz with 88.1 and 89 dB.
 */
export function readColumns(text: string, fileName: string): Result<ReadCurves> {
  const file: Place = { kind: 'file', id: fileName };
  if (text.length > MOST_CHARACTERS) return fail(problem('measured.too-large', file));
  if (text.includes('\0')) return fail(problem('measured.not-text', file));
  if (text.trim() === '') return fail(problem('measured.empty', file));
  const lines = sourceLines(text);
  const chosen = chooseLayout(lines.numeric, file);
  if (!chosen.ok) return chosen;
  const table = chosen.value;
  const firstLine = table.rows[0]!.line;
  const roles = columnRoles(
    lines.words.filter(({ line }) => line < firstLine),
    table.columnCount,
    file,
  );
  if (!roles.ok) return roles;
  const unread = table.unread.filter(({ line }) => line > firstLine);
  if (unread.length > MOST_UNREAD * (unread.length + table.rows.length)) {
    const { line, text: content } = unread[0]!;
    return fail(
      problem('measured.unreadable-lines', { ...file, line }, { count: unread.length, text: shortened(content) }),
    );
  }
  const notes: Finding[] = [];
  const note = (code: string, values: ProblemValues = {}, line?: number, severity: Finding['severity'] = 'note') =>
    notes.push({ ...problem(code, line === undefined ? file : { ...file, line }, values), severity });
  if (table.guessed) note('measured.comma-guessed', { layout: table.layout }, firstLine, 'warning');
  if (table.unread.length > 0)
    note('measured.lines-left-out', { count: table.unread.length }, table.unread[0]!.line, 'warning');
  return curveOf(table, roles.value, fileName, file, notes, note);
}

type Note = (code: string, values?: ProblemValues, line?: number, severity?: Finding['severity']) => void;

function curveOf(
  table: Table,
  roles: ColumnRoles,
  sourceName: string,
  file: Place,
  notes: readonly Finding[],
  note: Note,
): Result<ReadCurves> {
  const column = (index: number): number[] => table.rows.map(({ numbers }) => numbers[index]!);
  if (looksSwapped(column(roles.frequency), column(roles.magnitude)))
    return fail(problem('measured.columns-swapped', { ...file, line: table.rows[0]!.line }));
  const quantity = roles.quantity ?? guessQuantity(column(roles.magnitude));
  if (roles.quantity === undefined) note('measured.quantity-guessed', { quantity }, undefined, 'warning');
  const khz = roles.inKiloHertz ?? looksLikeKiloHertz(column(roles.frequency));
  if (khz && roles.inKiloHertz === undefined) note('measured.khz-guessed', {}, undefined, 'warning');
  const phase = phaseColumn(roles, column, table.columnCount, note);
  const used = phase === null ? 2 : 3;
  if (table.columnCount > used) note('measured.columns-left-out', { count: table.columnCount - used });

  const read = table.rows.map(({ line, numbers }) => ({
    line,
    frequencyHz: numbers[roles.frequency]! * (khz ? 1000 : 1),
    magnitude: numbers[roles.magnitude]!,
    phaseDeg: phase === null ? 0 : numbers[phase.column]! * (phase.radians ? 180 / Math.PI : 1),
  }));
  const points = tidy(read, quantity, note);
  if (points.length < 2) return fail(problem('measured.too-few', file, { count: points.length }));
  return succeed({
    quantity,
    quantityGuessed: roles.quantity === undefined,
    frequenciesHz: points.map((p) => p.frequencyHz),
    magnitudes: points.map((p) => p.magnitude),
    phasesDeg: phase === null ? null : points.map((p) => p.phaseDeg),
    sourceName,
    notes,
  });
}

/** The phase column with its unit, guessed where no header says, or null. */
function phaseColumn(
  roles: ColumnRoles,
  column: (index: number) => number[],
  columnCount: number,
  note: Note,
): { readonly column: number; readonly radians: boolean } | null {
  if (roles.phase === null || columnCount < 3) return null;
  const index = roles.phase ?? 2;
  const unnamed = roles.phase === undefined;
  const ignored = unnamed && looksLikeShare(column(index));
  const radians = roles.inRadians ?? guessPhaseUnit(column(index)) === 'radians';
  const unit = ignored ? 'ignored' : radians ? 'radians' : 'degrees';
  if (unnamed) note('measured.third-column-guessed', { unit }, undefined, 'warning');
  else if (roles.inRadians === undefined) note('measured.phase-unit-guessed', { unit }, undefined, 'warning');
  return ignored ? null : { column: index, radians };
}

/** Leaves out what cannot be, sorts, merges repeats and thins; each with a note. */
function tidy(read: readonly CurvePoint[], quantity: CurveQuantity, note: Note): readonly CurvePoint[] {
  const leaveOut = (points: readonly CurvePoint[], code: string, keep: (p: CurvePoint) => boolean) => {
    const out = points.filter((p) => !keep(p));
    if (out.length > 0) note(code, { count: out.length }, out[0]!.line, 'warning');
    return points.filter(keep);
  };
  let points = leaveOut(read, 'measured.frequency-not-positive', (p) => p.frequencyHz > 0);
  points = leaveOut(points, 'measured.impossible-magnitude', (p) =>
    quantity === 'impedance' ? p.magnitude > 0 : Math.abs(p.magnitude) <= LARGEST_DB,
  );
  if (points.some((p, i) => i > 0 && p.frequencyHz < points[i - 1]!.frequencyHz)) {
    note('measured.sorted');
    points = points.toSorted((a, b) => a.frequencyHz - b.frequencyHz);
  }
  const merged = mergeRepeats(points);
  if (merged.length < points.length) note('measured.repeats-merged', { count: points.length - merged.length });
  if (merged.length <= MOST_POINTS) return merged;
  const every = Math.ceil(merged.length / MOST_POINTS);
  note('measured.thinned', { every, count: merged.length });
  return merged.filter((_, i) => i % every === 0);
}

const shortened = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
