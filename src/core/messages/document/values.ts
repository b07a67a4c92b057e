import type { Place, ProblemValues, WordingByCode } from '../problem.ts';
import { capital, fieldOf, shown } from './subject.ts';

const found = (values: ProblemValues, place: Place) => shown(values.found, String(values.field ?? place.field ?? ''));
const limit = (values: ProblemValues, place: Place, key: string) =>
  shown(values[key], String(values.field ?? place.field ?? ''));

/** Sentences about single values: of a command or of a file. */
export const valueWording: WordingByCode = {
  'document.missing-field': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} is missing.`,
    remedy: 'Give it a value.',
  }),
  'document.wrong-type': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} should be ${values.expected}, but ${found(values, place)} was found.`,
    remedy: `Enter ${values.expected}.`,
  }),
  'document.too-small': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} is ${found(values, place)}; it must be ${values.exclusive ? 'above' : 'at least'} ${limit(values, place, 'least')}.`,
    remedy: `Enter a number ${values.exclusive ? 'above' : 'of at least'} ${limit(values, place, 'least')}.`,
  }),
  'document.too-great': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} is ${found(values, place)}; it may be ${limit(values, place, 'most')} at most.`,
    remedy: `Enter a number up to ${limit(values, place, 'most')}.`,
  }),
  'document.empty': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} is empty.`,
    remedy: 'Enter at least one character.',
  }),
  'document.too-long': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} has ${values.found} characters; ${values.most} are allowed.`,
    remedy: 'Shorten it.',
  }),
  'document.too-many': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} has ${values.found} entries; ${values.most} are allowed.`,
    remedy: 'Remove some first.',
  }),
  'document.too-few': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} has ${values.found} entries; at least ${values.least} are needed.`,
    remedy: 'Add what is missing.',
  }),
  'document.bad-node-name': (values, place) => ({
    sentence: `“${values.found}” cannot be a node's name (${fieldOf(place, values)}).`,
    remedy: 'Use 1 to 32 letters, digits or the characters _ . + - without spaces.',
  }),
  'document.not-one-of': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} is ${found(values, place)}; it must be one of ${values.options}.`,
    remedy: 'Choose one of these.',
  }),
  'document.unknown-field': (values, place) => ({
    sentence: `${capital(fieldOf(place, { ...values, field: String(values.inside ?? '') }))} has a field “${values.unknown}” that is not known here.`,
    remedy: 'Check its spelling, or take it out.',
  }),
  'document.not-valid': (values, place) => ({
    sentence: `The ${fieldOf(place, values)} cannot be used: ${values.detail}.`,
    remedy: 'Correct it.',
  }),
};
