import { documentFields, fieldWords, lastField, pathInWords } from '../documentFields.ts';
import { formatFigure } from '../formatFigure.ts';
import type { Place, ProblemValues } from '../problem.ts';

/** A place as it is called inside a sentence: "R1", "the driver “120 mm mid”", "the port", "the document". */
export function placeWords(place: Place, values: ProblemValues): string {
  const name = values.name ?? place.id;
  switch (place.kind) {
    case 'part':
      return String(place.id);
    case 'mount':
      return `the place of ${place.id}`;
    case 'node':
      return `node “${place.id}”`;
    case 'driver':
    case 'chamber':
    case 'curve':
      return `the ${place.kind} “${name}”`;
    case 'radiator':
      return `the passive radiator “${name}”`;
    case 'brace':
      return `brace ${place.id}`;
    case 'duct':
      return `the line “${name}”`;
    case 'port':
      return values.name === undefined ? `port ${place.id}` : String(values.name);
    case 'line':
      return `line ${place.line}`;
    case 'file':
      return 'the file';
    default:
      return 'the document';
  }
}

/** The field that a problem speaks of, with what it belongs to: "resistance of R1", "resonance fs of driver 2". */
export function fieldOf(place: Place, values: ProblemValues): string {
  const path = String(values.field ?? place.field ?? '');
  const inKeptState = values.keptState === undefined ? '' : ` in the kept state “${values.keptState}”`;
  if (path === '') return `${placeWords(place, values)}${inKeptState}`;
  if (place.kind === 'field' || place.kind === 'document' || place.kind === 'file') {
    return `${pathInWords(path)}${inKeptState}`;
  }
  return `${pathInWords(path)} of ${placeWords(place, values)}${inKeptState}`;
}

/** A number of the document in the unit that people read it in, with the unit; text in quotes. */
export function shown(value: string | number | undefined, path: string): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return `“${value}”`;
  const { unit, perSi } = fieldWords(lastField(path));
  return unit === '' ? formatFigure(value * perSi) : `${formatFigure(value * perSi)} ${unit}`;
}

/** Whether the last field of a path has words of its own. */
export const isKnownField = (path: string): boolean => documentFields[lastField(path)] !== undefined;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
