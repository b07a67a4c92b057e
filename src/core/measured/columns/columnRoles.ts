import { fail, type Place, problem, type Result, succeed } from '../../messages/problem.ts';
import type { CurveQuantity } from '../curveTable.ts';
import type { SourceLine } from './sourceLines.ts';

/** Which column is what, and in which unit, as far as headers and comments say so. */
export interface ColumnRoles {
  readonly frequency: number;
  readonly magnitude: number;
  /** null: no column is phase. undefined: nothing is said; a third column may be it. */
  readonly phase: number | null | undefined;
  /** undefined: no unit of frequency is named. */
  readonly inKiloHertz: boolean | undefined;
  readonly inRadians: boolean | undefined;
  readonly quantity: CurveQuantity | undefined;
}

type Role = 'frequency' | 'phase' | 'complex' | 'linear' | 'magnitude' | 'other';

const FREQUENCY = /freq|hz|^f\b/i;
const PHASE = /phase|phas\b/i;
const ANGLE = /\bdeg|°|\brad(?:ian)?s?\b|\barg\b|angle/i;
const DEGREES = /\bdeg|°/i;
const RADIANS = /\brad(?:ian)?s?\b/i;
const COMPLEX = /\b(?:re|im|real|imag|imaginary)\b/i;
const LINEAR = /\(lin|\blinear|\bm?pa\b|\bv\/v\b/i;
const RESPONSE = /\bdb|\bspl|\blevels?\b|response/i;
const IMPEDANCE = /\b(?:k|m)?ohm|Ω|Ω|impedan|\|z\||\bz\b/i;
const MAGNITUDE = /magn?\b|magnitude|ampl|gain|modulus/i;

function roleOf(cell: string): Role {
  if (PHASE.test(cell)) return 'phase';
  // Before real and imaginary parts: "dB re 20 µPa" has a "re" too.
  if (RESPONSE.test(cell)) return 'magnitude';
  if (FREQUENCY.test(cell)) return 'frequency';
  if (ANGLE.test(cell)) return 'phase';
  if (COMPLEX.test(cell)) return 'complex';
  if (IMPEDANCE.test(cell)) return 'magnitude';
  if (LINEAR.test(cell)) return 'linear';
  return MAGNITUDE.test(cell) ? 'magnitude' : 'other';
}

/** The cells of a header line under each way of dividing it; a unit in brackets belongs to the word before. */
const divisions = (text: string): readonly (readonly string[])[] =>
  [/[;|\t]+/, /,/, /\s{2,}/, /,?\s+(?![([])/].map((separator) =>
    text
      .split(separator)
      .map((cell) => cell.trim())
      .filter((cell) => cell !== ''),
  );

/** The last header line that has a cell for every column and names the frequency. */
function namedCells(words: readonly SourceLine[], columnCount: number): readonly string[] | undefined {
  for (const { text } of words.toReversed()) {
    const cells = divisions(text).find(
      (d) => d.length === columnCount && d.some((cell) => roleOf(cell) === 'frequency'),
    );
    if (cells !== undefined) return cells;
  }
  return undefined;
}

const unitOfAngle = (text: string): boolean | undefined =>
  DEGREES.test(text) ? false : RADIANS.test(text) ? true : undefined;
const unitOfFrequency = (text: string): boolean | undefined =>
  /(?<!k)hz\b/i.test(text) ? false : /khz\b/i.test(text) ? true : undefined;
const quantityIn = (text: string): CurveQuantity | undefined =>
  RESPONSE.test(text) === IMPEDANCE.test(text) ? undefined : RESPONSE.test(text) ? 'response' : 'impedance';

/**
 * Finds the columns by the words of the lines above the numbers. With a header that has a cell for every column each cell
 * speaks for its own; without one the order is frequency, magnitude, phase and the words speak for the whole file. Real
 * and imaginary parts or linear magnitudes are refused.
 */
export function columnRoles(words: readonly SourceLine[], columnCount: number, file: Place): Result<ColumnRoles> {
  const all = words.map(({ text }) => text).join('\n');
  const cells = namedCells(words, columnCount);
  if (cells === undefined) {
    return succeed({
      frequency: 0,
      magnitude: 1,
      phase: PHASE.test(all) ? 2 : undefined,
      inKiloHertz: unitOfFrequency(all),
      inRadians: unitOfAngle(all),
      quantity: quantityIn(all),
    });
  }
  const roles = cells.map(roleOf);
  if (roles.includes('complex')) return fail(problem('measured.real-imaginary', file));
  const frequency = roles.indexOf('frequency');
  const named = roles.indexOf('magnitude');
  if (named < 0 && roles.includes('linear')) return fail(problem('measured.linear-magnitude', file));
  const magnitude = named >= 0 ? named : cells.findIndex((_, i) => i !== frequency && roles[i] === 'other');
  if (magnitude < 0) return fail(problem('measured.no-magnitude', file));
  const phase = roles.indexOf('phase');
  return succeed({
    frequency,
    magnitude,
    phase: phase < 0 ? null : phase,
    inKiloHertz: unitOfFrequency(cells[frequency]!) ?? unitOfFrequency(all),
    inRadians: phase < 0 ? undefined : (unitOfAngle(cells[phase]!) ?? unitOfAngle(all)),
    quantity: quantityIn(cells[magnitude]!) ?? quantityIn(all),
  });
}
