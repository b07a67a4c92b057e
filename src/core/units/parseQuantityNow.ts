import { fail, type Problem, type ProblemValues, problem, type Result, succeed } from '../messages/problem.ts';
import { findUnit, findUnitAnywhere, requireUnit, toInside } from './findUnit.ts';
import { readLetterCode } from './letterCode.ts';
import type { QuantityKind } from './quantityKind.ts';
import { tidyNumbers } from './tidyNumbers.ts';
import { tidyText } from './tidyText.ts';

export const LONGEST_QUANTITY_TEXT = 64;
const NUMBER_THEN_UNIT = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?) ?(\D.*)?$/;
const ARITHMETIC = /[-+*/^()]|\d\D+\d/;

export const quantityProblem = (code: string, kind: QuantityKind, values: ProblemValues): Problem =>
  problem(code, { kind: 'field' }, { ...values, wanted: kind });

/** The inside value, refused where it is not a finite number. */
export const finiteQuantity = (value: number, text: string, kind: QuantityKind): Result<number> =>
  Number.isFinite(value) ? succeed(value) : fail(quantityProblem('units.not-finite', kind, { text }));

/** The text in plain characters with decimal points, or why it cannot be read. */
export function tidyQuantityText(text: string, kind: QuantityKind): Result<string> {
  if (text.length > LONGEST_QUANTITY_TEXT)
    return fail(quantityProblem('units.too-long', kind, { length: text.length }));
  const tidied = tidyText(text);
  if (tidied === '') return fail(quantityProblem('units.empty', kind, {}));
  const numbers = tidyNumbers(tidied);
  if (numbers.how === 'read') return succeed(numbers.text);
  const code = numbers.how === 'ambiguous' ? 'units.ambiguous-comma' : 'units.not-understood';
  return fail(quantityProblem(code, kind, { text: numbers.number }));
}

/**
 * Reads what a person typed into a field of `kind`, where that is a number, a number with a unit or a marking like 4R7;
 * anything that needs arithmetic is answered with 'needs-expression' (`createExpressionReader` reads that). A plain
 * number is in `defaultUnit`, the unit that the field shows. The value is in the kind's inside unit (SI; degrees, °C, dB).
 *
 * Fails with units.empty, too-long, ambiguous-comma, not-understood, unknown-unit, wrong-kind or not-finite; throws when
 * the kind has no `defaultUnit`.
 *
 * Example: `parseQuantityNow('6,8 µF', 'capacitance', 'µF')` succeeds with 6.8e-6.
 */
export function parseQuantityNow(
  text: string,
  kind: QuantityKind,
  defaultUnit: string,
): Result<number> | 'needs-expression' {
  const shownUnit = requireUnit(defaultUnit, kind);
  const tidied = tidyQuantityText(text, kind);
  if (!tidied.ok) return tidied;
  if (kind === 'resistance' || kind === 'capacitance' || kind === 'inductance') {
    const code = readLetterCode(tidied.value, kind);
    if (code !== null && code.tolerancePercent === null) return succeed(code.value);
  }
  const match = NUMBER_THEN_UNIT.exec(tidied.value);
  if (match !== null) {
    const [, number = '', name] = match;
    const unit = name === undefined ? shownUnit : findUnit(name, kind);
    if (unit !== undefined) return finiteQuantity(toInside(number, unit), text, kind);
    const found = findUnitAnywhere(name ?? '');
    if (found !== undefined) return fail(quantityProblem('units.wrong-kind', kind, { text, found: found.kind }));
    if (!/[-+*/^()\d]/.test(name ?? ''))
      return fail(quantityProblem('units.unknown-unit', kind, { text, unit: name ?? '' }));
  }
  return ARITHMETIC.test(tidied.value)
    ? 'needs-expression'
    : fail(quantityProblem('units.not-understood', kind, { text }));
}
