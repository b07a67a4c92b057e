import { fieldWords } from '../../messages/documentFields.ts';
import { alike } from '../commands/withChanges.ts';
import { type FieldValue, formatChange } from './formatField.ts';

/**
 * A short label for some changed fields of one thing: "R1 1.0 → 2.2 Ω" where the field goes without saying, else
 * "port length 118 → 96 mm"; several fields are counted. `silent` are the fields that need no word.
 */
export function describeChanges(
  thing: string,
  before: object | undefined,
  changes: object,
  silent: readonly string[] = [],
): string {
  const was = (before ?? {}) as Record<string, unknown>;
  const changed = Object.entries(changes).filter(([key, value]) => value !== undefined && !alike(was[key], value));
  const [first] = changed;
  if (!first) return `${thing} unchanged`;
  if (changed.length > 1) {
    const words = changed.map(([key]) => fieldWords(key).words);
    return words.length === 2 ? `${thing} ${words.join(' and ')}` : `${thing}: ${words.length} values`;
  }
  const [key, after] = first;
  if (typeof after === 'object' && after !== null) {
    const inner = was[key];
    return describeChanges(thing, typeof inner === 'object' && inner !== null ? inner : {}, dropped(inner, after));
  }
  const { words } = fieldWords(key);
  const label = silent.includes(key) ? thing : `${thing} ${words}`;
  const prior = was[key];
  if (typeof prior === 'object' && prior !== null) return `${thing} ${words}`;
  if (typeof after === 'string' && after.length > 24) return `${thing} ${words}`;
  return `${label} ${formatChange(key, prior as FieldValue, after as FieldValue)}`;
}

/** Fields that the new group no longer has count as changed to nothing. */
function dropped(before: unknown, after: object): object {
  if (typeof before !== 'object' || before === null) return after;
  const gone = Object.keys(before).filter((key) => !(key in after));
  return { ...Object.fromEntries(gone.map((key) => [key, null])), ...after };
}
