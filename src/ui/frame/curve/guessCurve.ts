import type { Driver } from '../../../core/document/schema.ts';

/** Whose a measured curve seems to be, and from how far it was taken where the name says so. */
export interface CurveGuess {
  /** `left`, `right`, or `driver ID`. */
  readonly owner: string;
  readonly distanceM: number | null;
}

/**
 * What a file's name says about the curves in it. A driver's name or role, as a word, means that driver; `left`, `right`,
 * `l` and `r` mean the whole speaker of that channel; with nothing said, or where two drivers could be meant, it is the
 * whole speaker, left. A distance is a number of metres or centimetres; millimetres are how drivers' sizes are written.
 * @example guessCurve('right_0.4m.txt', []) // { owner: 'right', distanceM: 0.4 }
 */
export function guessCurve(fileName: string, drivers: readonly Pick<Driver, 'id' | 'name' | 'role'>[]): CurveGuess {
  const name = fileName.replace(/\.[a-z]{1,5}$/i, '');
  const words = wordsOf(name);
  const meant = driverMeant(words, drivers);
  const left = words.includes('left') || LONE_L.test(name);
  const right = words.includes('right') || LONE_R.test(name);
  return {
    owner: meant === null ? (right && !left ? 'right' : 'left') : `driver ${meant}`,
    distanceM: distanceIn(name),
  };
}

function driverMeant(words: readonly string[], drivers: readonly Pick<Driver, 'id' | 'name' | 'role'>[]) {
  const run = ` ${words.join(' ')} `;
  const says = (text: string): boolean => text !== '' && run.includes(` ${text} `);
  const named = drivers.filter((driver) => says(wordsOf(driver.name).join(' ')));
  const candidates = named.length > 0 ? named : drivers.filter(({ role }) => ROLE_WORDS[role].some(says));
  return candidates.length === 1 ? (candidates[0]?.id ?? null) : null;
}

const ROLE_WORDS: Readonly<Record<Driver['role'], readonly string[]>> = {
  woofer: ['woofer'],
  mid: ['mid', 'midrange', 'mid range'],
  tweeter: ['tweeter'],
  'full-range': ['full range', 'fullrange'],
};

/** Words and numbers in small letters; `28mm` and `tweeterLeft` fall apart at the change of kind. */
const wordsOf = (text: string): readonly string[] =>
  (text.match(/\p{Lu}?\p{Ll}+|\p{Lu}+(?!\p{Ll})|\p{L}+|\p{N}+/gu) ?? []).map((word) => word.toLowerCase());

const LONE_L = /(?<![\p{L}\p{N}])l(?![\p{L}\p{N}])/iu;
const LONE_R = /(?<![\p{L}\p{N}])r(?![\p{L}\p{N}])/iu;

const DISTANCE = /(?<![\p{L}\p{N}.,])(\d+(?:[.,]\d+)?)[ _]?(cm|m)(?![\p{L}\p{N}])/iu;

function distanceIn(name: string): number | null {
  const found = DISTANCE.exec(name);
  const number = Number(found?.[1]?.replace(',', '.'));
  if (!(number > 0)) return null;
  return found?.[2]?.toLowerCase() === 'cm' ? number / 100 : number;
}
