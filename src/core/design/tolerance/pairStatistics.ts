import { bandIndices } from '../band.ts';
import type { BuiltPairs } from './buildPairs.ts';

/** Within what a build must stay of a curve. */
export interface ToleranceWindow {
  readonly fromHz: number;
  readonly toHz: number;
  readonly withinDb: number;
  /** A build's mean departure over the band does not count: it is the volume control's. */
  readonly levelIsFree: boolean;
}

export interface PairStatistics {
  readonly pairs: number;
  /** In the order asked for: so many of the builds lie below, dB re the nominal curve. */
  readonly quantilesDb: readonly Float64Array[];
  readonly meanDb: Float64Array;
  readonly deviationDb: Float64Array;
  readonly lowestDb: Float64Array;
  readonly highestDb: Float64Array;
  /** Left and right of a pair, magnitude of the difference: what 95 % of pairs stay below, and the worst. */
  readonly difference95Db: Float64Array;
  readonly worstDifference: { readonly db: number; readonly atHz: number; readonly pair: number } | null;
  /** Share of loudspeakers, and of pairs with both sides, within the window; with its standard error. */
  readonly loudspeakerYield: Share;
  readonly pairYield: Share;
}

export interface Share {
  readonly share: number;
  readonly standardError: number;
}

/**
 * Bands, differences and yield of built pairs, put together from wherever they were built. Worst difference within the
 * window's band. Throws for builds of different sweeps, and for none at all.
 * @example pairStatistics([built], frequenciesHz, [0.05, 0.5, 0.95], window).quantilesDb[0]
 */
export function pairStatistics(
  built: readonly BuiltPairs[],
  frequenciesHz: Float64Array,
  quantiles: readonly number[],
  window: ToleranceWindow,
): PairStatistics {
  const count = frequenciesHz.length;
  const pairs = built.reduce((sum, one) => sum + one.pairs, 0);
  if (pairs === 0) throw new RangeError('Nothing was built.');
  if (built.some(({ frequencyCount }) => frequencyCount !== count)) throw new RangeError('Builds of other sweeps.');
  const curves = () => new Float64Array(count);
  const out = { mean: curves(), deviation: curves(), lowest: curves(), highest: curves(), difference: curves() };
  const quantilesDb = quantiles.map(curves);
  const column = new Float32Array(2 * pairs);
  const apart = new Float32Array(pairs);
  const { from, to } = bandIndices(frequenciesHz, window.fromHz, window.toHz);
  let worst: PairStatistics['worstDifference'] = null;
  for (let f = 0; f < count; f++) {
    let at = 0;
    let sum = 0;
    for (const { departuresDb, pairs: n } of built) {
      for (let row = 0; row < 2 * n; row++) sum += column[at++] = departuresDb[row * count + f]!;
    }
    const mean = sum / column.length;
    let squares = 0;
    for (const x of column) squares += (x - mean) ** 2;
    for (let pair = 0; pair < pairs; pair++) {
      const db = Math.abs(column[2 * pair]! - column[2 * pair + 1]!);
      apart[pair] = db;
      if (f >= from && f < to && (worst === null || db > worst.db)) worst = { db, atHz: frequenciesHz[f]!, pair };
    }
    column.sort();
    apart.sort();
    out.mean[f] = mean;
    out.deviation[f] = Math.sqrt(squares / Math.max(1, column.length - 1));
    out.lowest[f] = column[0]!;
    out.highest[f] = column.at(-1)!;
    out.difference[f] = quantileOf(apart, 0.95);
    quantiles.forEach((q, i) => {
      quantilesDb[i]![f] = quantileOf(column, q);
    });
  }
  return {
    pairs,
    quantilesDb,
    meanDb: out.mean,
    deviationDb: out.deviation,
    lowestDb: out.lowest,
    highestDb: out.highest,
    difference95Db: out.difference,
    worstDifference: worst,
    ...yields(built, count, from, to, window),
  };
}

/** By linear interpolation between the ordered values. */
function quantileOf(ordered: Float32Array, q: number): number {
  const place = q * (ordered.length - 1);
  const below = Math.floor(place);
  const low = ordered[below]!;
  return low + (place - below) * (ordered[Math.min(below + 1, ordered.length - 1)]! - low);
}

function yields(
  built: readonly BuiltPairs[],
  count: number,
  from: number,
  to: number,
  { withinDb, levelIsFree }: ToleranceWindow,
): Pick<PairStatistics, 'loudspeakerYield' | 'pairYield'> {
  let loudspeakers = 0;
  let good = 0;
  let goodPairs = 0;
  for (const { departuresDb, pairs } of built) {
    for (let row = 0, before = 0; row < 2 * pairs; row++) {
      const passes = staysWithin(departuresDb, row * count + from, row * count + to, withinDb, levelIsFree) ? 1 : 0;
      good += passes;
      if (row % 2 === 1) goodPairs += before * passes;
      before = passes;
    }
    loudspeakers += 2 * pairs;
  }
  return { loudspeakerYield: shareOf(good, loudspeakers), pairYield: shareOf(goodPairs, loudspeakers / 2) };
}

function staysWithin(db: Float32Array, from: number, to: number, withinDb: number, levelIsFree: boolean): boolean {
  let mean = 0;
  if (levelIsFree) for (let f = from; f < to; f++) mean += db[f]! / (to - from);
  for (let f = from; f < to; f++) if (Math.abs(db[f]! - mean) > withinDb) return false;
  return true;
}

/** Standard error of a counted share, with a half added either way so that none or all is not taken for certain. */
function shareOf(good: number, of: number): Share {
  const p = (good + 0.5) / (of + 1);
  return { share: good / of, standardError: Math.sqrt((p * (1 - p)) / of) };
}
