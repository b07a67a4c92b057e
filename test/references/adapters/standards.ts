import { levelFor1WDb, voltageFor1WV } from '../../../src/core/units/characteristicSensitivity.ts';
import { EFFECTIVE_RANGE } from '../../../src/core/units/effectiveRange.ts';
import { DB_PER_DECADE, DECADES_PER_DECADE, POLAR_RANGE_DB } from '../../../src/core/units/plotProportions.ts';
import { greatestRatedImpedanceOhm, mayBeRated } from '../../../src/core/units/ratedImpedance.ts';
import { bandEdgesHz, midbandHz, nominalThirdOctaveHz, OCTAVE_RATIO } from '../../../src/core/units/standardBands.ts';
import type { Adapter } from '../adapter.ts';
import { asNumbers } from '../convert.ts';

const thirdOctaves: Adapter = {
  family: 'std-third-oct',
  requires: ['n'],
  run: ({ n }) => ({
    nominal_Hz: asNumbers(n).map(nominalThirdOctaveHz),
    exact_Hz: asNumbers(n).map((index) => midbandHz(index, 3)),
  }),
};

const fractionalOctaves: Adapter = {
  family: 'std-frac-oct',
  requires: [],
  run: () => ({
    third_octave_1k_edges_Hz: [...bandEdgesHz(midbandHz(0, 3), 3)],
    octave_1k_edges_Hz: [...bandEdgesHz(midbandHz(0, 1), 1)],
    sixth_octave_first_above_1k_Hz: midbandHz(0, 6),
    twelfth_octave_first_above_1k_Hz: midbandHz(0, 12),
    octave_ratio_G: OCTAVE_RATIO,
  }),
};

const plotScales: Adapter = {
  family: 'std-60263',
  requires: [],
  run: () => ({
    dB_per_decade_allowed_2020: [...DB_PER_DECADE],
    log_quantities_decades_per_decade: [...DECADES_PER_DECADE],
  }),
};

const polarScales: Adapter = {
  family: 'std-60263-polar',
  requires: [],
  run: () => ({
    absolute_level_range_dB: [...POLAR_RANGE_DB.absolute],
    relative_level_range_dB: POLAR_RANGE_DB.relative,
  }),
};

/** Ratings that a case may ask about by the name of its output. */
const RATINGS_OHM = [2, 3, 4, 5, 6, 8, 10, 12, 15, 16] as const;

const ratedImpedance: Adapter = {
  family: 'std-60268-5-zmin',
  requires: ['Zmin_ohm'],
  run: ({ Zmin_ohm }) => ({
    max_rated_ohm: asNumbers(Zmin_ohm).map(greatestRatedImpedanceOhm),
    ...Object.fromEntries(
      RATINGS_OHM.map((rated) => [
        `may_be_rated_${rated}ohm`,
        asNumbers(Zmin_ohm).map((least) => mayBeRated(least, rated)),
      ]),
    ),
  }),
};

const frequencyRange: Adapter = {
  family: 'std-60268-5-freqrange',
  requires: [],
  run: () => ({
    drop_dB: EFFECTIVE_RANGE.dropDb,
    averaging_octaves_at_max_region: EFFECTIVE_RANGE.averagingOctaves,
    ignore_dips_narrower_than_octave: EFFECTIVE_RANGE.ignoredTroughOctaves,
  }),
};

const sensitivity: Adapter = {
  family: 'std-60268-5-sens',
  requires: ['Rrated_ohm'],
  run: ({ Rrated_ohm }) => ({
    U_V_for_1W: asNumbers(Rrated_ohm).map(voltageFor1WV),
    shift_dB_2V83_to_1W: asNumbers(Rrated_ohm).map((rated) => levelFor1WDb(0, rated)),
    example_88dB_2V83_4ohm_gives_dB_1W: levelFor1WDb(88, 4),
  }),
};

export const adapters: readonly Adapter[] = [
  thirdOctaves,
  fractionalOctaves,
  plotScales,
  polarScales,
  ratedImpedance,
  frequencyRange,
  sensitivity,
];
