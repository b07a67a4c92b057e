import { bandIndices, greatestInBand, leastInBand } from './band.ts';

// Key figures of a response, by the project's own conventions: the reference is the mean level from 200 Hz to 2 kHz.
export const MEAN_FROM_HZ = 200;
export const MEAN_TO_HZ = 2000;
export const RIPPLE_TO_HZ = 10000;

/** Mean of levels in dB over a logarithmic frequency axis (trapezoids), null where fewer than two points lie in the band. */
export function meanLevelDb(
  levelsDb: Float64Array,
  frequenciesHz: Float64Array,
  fromHz = MEAN_FROM_HZ,
  toHz = MEAN_TO_HZ,
): number | null {
  const { from, to } = bandIndices(frequenciesHz, fromHz, toHz);
  if (to - from < 2) return null;
  let area = 0;
  for (let i = from + 1; i < to; i++) {
    area += 0.5 * (levelsDb[i]! + levelsDb[i - 1]!) * Math.log(frequenciesHz[i]! / frequenciesHz[i - 1]!);
  }
  return area / Math.log(frequenciesHz[to - 1]! / frequenciesHz[from]!);
}

/** With a wider spread than this a loudspeaker does not cover a band, and its evenness there says nothing. */
const NOT_COVERED_DB = 20;

/**
 * Half of greatest minus least level in a band, dB; null where the level falls more than 20 dB below the greatest: the
 * loudspeaker does not cover the band, and the figure would say nothing.
 */
export function rippleDb(
  levelsDb: Float64Array,
  frequenciesHz: Float64Array,
  fromHz: number,
  toHz: number,
): number | null {
  const greatest = greatestInBand(levelsDb, frequenciesHz, fromHz, toHz);
  const least = leastInBand(levelsDb, frequenciesHz, fromHz, toHz);
  if (greatest === null || least === null || greatest.value - least.value > NOT_COVERED_DB) return null;
  return (greatest.value - least.value) / 2;
}

/**
 * Frequency where the level, going from `startHz` down or up, first falls `dropDb` below `referenceDb`; linear in log
 * frequency between the sweep's points. Where the level is already down at `startHz`, the crossing nearest to it on the other
 * side is meant. null where there is none within the sweep.
 */
export function dropFrequencyHz(
  levelsDb: Float64Array,
  frequenciesHz: Float64Array,
  startHz: number,
  direction: 'down' | 'up',
  referenceDb: number,
  dropDb = 3,
): number | null {
  const goal = referenceDb - dropDb;
  const step = direction === 'down' ? -1 : 1;
  let i = 0;
  while (i < frequenciesHz.length - 1 && frequenciesHz[i]! < startHz) i++;
  while (i >= 0 && i < frequenciesHz.length && levelsDb[i]! <= goal) i -= step;
  if (i < 0 || i >= frequenciesHz.length) return null;
  for (; i >= 0 && i < frequenciesHz.length; i += step) {
    if (levelsDb[i]! > goal) continue;
    const before = i - step;
    const share = (levelsDb[before]! - goal) / (levelsDb[before]! - levelsDb[i]!);
    return frequenciesHz[before]! * (frequenciesHz[i]! / frequenciesHz[before]!) ** share;
  }
  return null;
}
