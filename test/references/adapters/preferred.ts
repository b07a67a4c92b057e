import { readLetterCode } from '../../../src/core/units/letterCode.ts';
import { nearestPreferred } from '../../../src/core/units/nearestPreferred.ts';
import { preferredMantissas, type SeriesName } from '../../../src/core/units/preferredSeries.ts';
import { TOLERANCE_LETTERS } from '../../../src/core/units/toleranceLetters.ts';
import type { Adapter, Json } from '../adapter.ts';
import { asNumbers, asText } from '../convert.ts';

const seriesName = (x: Json | undefined): SeriesName => asText(x) as SeriesName;

const series: Adapter = {
  family: 'std-e',
  requires: ['series'],
  run: ({ series }) => {
    const names = Array.isArray(series) ? series.map(seriesName) : [seriesName(series)];
    return Object.fromEntries(names.map((name) => [name, [...preferredMantissas(name)]]));
  },
};

const nearest: Adapter = {
  family: 'std-near',
  requires: ['series', 'targets'],
  run: ({ series, targets }) => {
    const by = (distance: 'log' | 'linear') =>
      asNumbers(targets).map((target) => nearestPreferred(target, seriesName(series), distance));
    return { nearest_log: by('log'), nearest_linear: by('linear') };
  },
};

// The cases name markings in their outputs alone, so every preferred value is offered in every way of writing it: the
// letter before, between or after the digits, two digits with or without a nought behind; and the cases' own 47K3.
const markings = (letters: string): readonly string[] =>
  [...preferredMantissas('E24'), ...preferredMantissas('E96'), 473]
    .map(String)
    .flatMap((digits) => [digits, `${digits}0`])
    .flatMap((digits) =>
      [...letters].flatMap((letter) =>
        [...digits, ''].map((_, place) => `${digits.slice(0, place)}${letter}${digits.slice(place)}`),
      ),
    );

const letterCodes: Adapter = {
  family: 'std-rkm',
  requires: [],
  run: () => ({
    ...Object.fromEntries(markings('RKMG').map((code) => [code, readLetterCode(code, 'resistance')?.value ?? null])),
    ...Object.fromEntries(
      markings('pnumF').map((code) => [`${code}_F`, readLetterCode(code, 'capacitance')?.value ?? null]),
    ),
  }),
};

const tolerances: Adapter = {
  family: 'std-tol',
  requires: [],
  run: () => ({ letters: Object.fromEntries(TOLERANCE_LETTERS) }),
};

export const adapters: readonly Adapter[] = [series, nearest, letterCodes, tolerances];
