import { TOLERANCE_LETTERS } from './toleranceLetters.ts';

type CodedKind = 'resistance' | 'capacitance' | 'inductance';

const POWERS: Readonly<Record<CodedKind, ReadonlyMap<string, number>>> = {
  // r and k in lower case: common practice, no source. L (milliohm): from memory.
  resistance: new Map([
    ['L', -3],
    ['R', 0],
    ['r', 0],
    ['K', 3],
    ['k', 3],
    ['M', 6],
    ['G', 9],
    ['T', 12],
  ]),
  capacitance: new Map([
    ['p', -12],
    ['n', -9],
    ['u', -6],
    ['µ', -6],
    ['m', -3],
    ['F', 0],
  ]),
  // Coils are outside the standard; common practice, no source.
  inductance: new Map([
    ['n', -9],
    ['u', -6],
    ['µ', -6],
    ['m', -3],
    ['H', 0],
  ]),
};

export interface LetterCode {
  /** Ohm, farad or henry. */
  readonly value: number;
  /** Symmetrical tolerance in percent where a second letter gives it, else null. */
  readonly tolerancePercent: number | null;
}

/**
 * Reads a marking in which a letter stands in place of the decimal point: 4R7 is 4.7 Ω, R47 is 0.47 Ω, 2u2 is 2.2 µF;
 * a letter after the last digit is the tolerance (4K7J: ±5 %). Returns null when the text is no such marking.
 *
 * Source: IEC 60062:2016 (examples looked up in an encyclopedia article; L for milliohm from memory).
 * Example: `readLetterCode('47K3', 'resistance')?.value` is 47300.
 */
export function readLetterCode(text: string, kind: CodedKind): LetterCode | null {
  const match = /^(\d*)([A-Za-zµ])(\d*)([A-Z]?)$/.exec(text);
  if (match === null) return null;
  const [, whole = '', letter = '', fraction = '', toleranceLetter = ''] = match;
  const power = POWERS[kind].get(letter);
  if (power === undefined || whole + fraction === '') return null;
  const tolerancePercent = toleranceLetter === '' ? null : TOLERANCE_LETTERS.get(toleranceLetter);
  if (tolerancePercent === undefined) return null;
  const value = Number(`${whole || '0'}.${fraction || '0'}e${power}`);
  return Number.isFinite(value) ? { value, tolerancePercent } : null;
}
