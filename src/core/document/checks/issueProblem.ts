import type * as z from 'zod/mini';
import { type Place, type Problem, problem } from '../../messages/problem.ts';

type Issue = z.core.$ZodIssue;

const kindOf: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text',
  array: 'a list',
  tuple: 'a list',
  object: 'a group of fields',
  boolean: 'yes or no',
};

const valueAt = (input: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[step] : undefined,
    input,
  );

function foundText(value: unknown): string | number {
  if (typeof value === 'number') return value;
  if (typeof value === 'string') return value.length > 40 ? `${value.slice(0, 39)}…` : value;
  if (value === null) return 'an empty value';
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'object' ? 'a group of fields' : String(value);
}

/**
 * A flaw that the schema found, as a Problem that names the field, the found value and the limit.
 * `input` is what was validated; its path is put behind `place` as the field. Never throws.
 */
export function issueProblem(issue: Issue, input: unknown, place: Place): Problem {
  const field = [...(place.field === undefined ? [] : [place.field]), ...issue.path.map(String)].join('.');
  const at: Place = field === '' ? place : { ...place, field };
  const value = valueAt(input, issue.path);
  const found = foundText(value);
  const of = (code: string, values: Readonly<Record<string, string | number>>) =>
    problem(`document.${code}`, at, { field, ...values });

  switch (issue.code) {
    case 'invalid_type':
      if (value === undefined) return of('missing-field', {});
      return of('wrong-type', { expected: kindOf[issue.expected] ?? issue.expected, found });
    case 'too_small': {
      const least = Number(issue.minimum);
      if (issue.origin === 'string') return of('empty', {});
      if (issue.origin === 'array') return of('too-few', { found: lengthOf(value), least });
      return of('too-small', { found, least, exclusive: issue.inclusive === false ? 1 : 0 });
    }
    case 'too_big': {
      const most = Number(issue.maximum);
      if (issue.origin === 'string') return of('too-long', { found: lengthOf(value), most });
      if (issue.origin === 'array') return of('too-many', { found: lengthOf(value), most });
      return of('too-great', { found, most });
    }
    case 'invalid_format':
      return of('bad-node-name', { found });
    case 'invalid_value':
      if (value === undefined) return of('missing-field', {});
      return of('not-one-of', { found, options: issue.values.map(String).join(', ') });
    case 'invalid_union': {
      if (value === undefined) return of('missing-field', {});
      const options = (issue as { readonly options?: readonly unknown[] }).options ?? [];
      return of('not-one-of', { found, options: options.map(String).join(', ') });
    }
    case 'unrecognized_keys':
      return of('unknown-field', { unknown: issue.keys.join(', '), inside: field });
    default:
      return of('not-valid', { detail: issue.message });
  }
}

const lengthOf = (value: unknown): number =>
  typeof value === 'string' || Array.isArray(value) ? value.length : Number.NaN;
