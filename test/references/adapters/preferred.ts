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

// Markings as the tables of the standard write them, and those of the case; it names them in its outputs alone.
const RESISTORS = (
  'R10 R22 R33 R47 R332 1R0 2R2 3R3 3R32 4R7 10R 33R 33R2 47R 100R 220R 332R 470R 590R 1K0 1K5 2K2 3K3 3K32 4K7 ' +
  '10K 33K2 47K 47K3 100K 332K 470K 1M0 2M2 3M3 3M32 4M7 10M 33M2 1G0'
).split(' ');
const CAPACITORS = (
  'p10 p332 1p0 2p2 3p32 4p7 10p 33p2 47p 100p 332p n10 n22 n33 n47 n332 1n0 2n2 3n3 3n32 4n7 10n 33n2 47n 100n 332n ' +
  'u10 u22 u33 u47 u332 1u0 2u2 3u3 3u32 4u7 6u8 10u 33u2 47u 100u 332u 1m0 10m'
).split(' ');

const letterCodes: Adapter = {
  family: 'std-rkm',
  requires: [],
  run: () => ({
    ...Object.fromEntries(RESISTORS.map((code) => [code, readLetterCode(code, 'resistance')?.value ?? null])),
    ...Object.fromEntries(CAPACITORS.map((code) => [`${code}_F`, readLetterCode(code, 'capacitance')?.value ?? null])),
  }),
};

const tolerances: Adapter = {
  family: 'std-tol',
  requires: [],
  run: () => ({ letters: Object.fromEntries(TOLERANCE_LETTERS) }),
};

export const adapters: readonly Adapter[] = [series, nearest, letterCodes, tolerances];
