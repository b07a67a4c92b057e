import { fieldWords, lastField } from '../../messages/documentFields.ts';
import { formatFigure } from '../../messages/formatFigure.ts';

export type FieldValue = string | number | boolean | null | undefined;

/** One value of the document as short text in the unit that people read it in: 0.118 of 'lengthM' is "118 mm". */
export function formatField(field: string, value: FieldValue, digits = 4): string {
  const unit = unitOf(field);
  const text = bare(field, value, digits);
  return typeof value !== 'number' || unit === '' ? text : `${text} ${unit}`;
}

/** Before and after as "118 → 96 mm", with as many digits as it takes to tell them apart. */
export function formatChange(field: string, before: FieldValue, after: FieldValue): string {
  let digits = 4;
  while (digits < 9 && before !== after && bare(field, before, digits) === bare(field, after, digits)) digits++;
  const bothNumbers = typeof before === 'number' && typeof after === 'number';
  const first = bothNumbers ? bare(field, before, digits) : formatField(field, before, digits);
  return `${first} → ${formatField(field, after, digits)}`;
}

const unitOf = (field: string) => fieldWords(lastField(field)).unit;

function bare(field: string, value: FieldValue, digits: number): string {
  if (value === null || value === undefined) return 'none';
  if (typeof value !== 'number') return String(value);
  return formatFigure(value * fieldWords(lastField(field)).perSi, digits);
}
