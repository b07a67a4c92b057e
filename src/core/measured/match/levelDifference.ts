import { interpolateLogInto } from '../../math/interpolateLog.ts';
import { logGrid } from '../logGrid.ts';
import { smoothPower } from '../smoothPower.ts';

/** Levels in dB over ascending frequencies; an impedance as 20 lg of its ohms. */
export interface LevelCurve {
  readonly frequenciesHz: ArrayLike<number>;
  readonly levelsDb: ArrayLike<number>;
}

export interface LevelDifference {
  readonly frequenciesHz: Float64Array;
  /** First less second, both smoothed, less `alignedByDb`. */
  readonly differenceDb: Float64Array;
  /** Mean difference over the aligning band, which was taken off; 0 where none was asked for. */
  readonly alignedByDb: number;
}

export interface DifferenceOptions {
  /** 1/fraction octave; null: not smoothed. */
  readonly fraction: number | null;
  /** Band over whose octaves the mean difference is taken off; null: none is. */
  readonly alignHz: readonly [number, number] | null;
}

const PER_OCTAVE = 24;

/**
 * Difference of two levels over the band that both cover, 24 points to the octave; null where they share less than half an octave
 * or the aligning band lies outside of what they share.
 *
 * Each curve is smoothed for itself, before the difference. Example: two equal curves give 0 everywhere.
 */
export function levelDifference(
  first: LevelCurve,
  second: LevelCurve,
  { fraction, alignHz }: DifferenceOptions,
): LevelDifference | null {
  const ends = [first, second].map(({ frequenciesHz: f }) => [f[0]!, f[f.length - 1]!] as const);
  const fromHz = Math.max(...ends.map(([from]) => from));
  const toHz = Math.min(...ends.map(([, to]) => to));
  if (!(toHz >= Math.SQRT2 * fromHz)) return null;
  const frequenciesHz = logGrid(fromHz, toHz, PER_OCTAVE);
  const [a, b] = [first, second].map((curve) => {
    const { frequenciesHz: f, levelsDb } = cutTo(curve, fromHz, toHz);
    const on = new Float64Array(frequenciesHz.length);
    interpolateLogInto(on, frequenciesHz, f, fraction === null ? levelsDb : smoothPower(f, levelsDb, fraction));
    return on;
  });
  const raw = frequenciesHz.map((_, i) => a![i]! - b![i]!);
  if (alignHz === null) return { frequenciesHz, differenceDb: raw, alignedByDb: 0 };
  const within = raw.filter((_, i) => alignHz[0] <= frequenciesHz[i]! && frequenciesHz[i]! <= alignHz[1]);
  if (within.length === 0) return null;
  const alignedByDb = within.reduce((sum, db) => sum + db, 0) / within.length;
  return { frequenciesHz, differenceDb: raw.map((db) => db - alignedByDb), alignedByDb };
}

/** The curve between two of its frequencies, both ends included, so that smoothing narrows alike for all that share them. */
function cutTo({ frequenciesHz, levelsDb }: LevelCurve, fromHz: number, toHz: number): LevelCurve {
  const inside: number[] = [];
  for (let i = 0; i < frequenciesHz.length; i++)
    if (frequenciesHz[i]! > fromHz * (1 + 1e-9) && frequenciesHz[i]! < toHz * (1 - 1e-9)) inside.push(i);
  const ends = new Float64Array(2);
  interpolateLogInto(ends, [fromHz, toHz], frequenciesHz, levelsDb);
  return {
    frequenciesHz: [fromHz, ...inside.map((i) => frequenciesHz[i]!), toHz],
    levelsDb: [ends[0]!, ...inside.map((i) => levelsDb[i]!), ends[1]!],
  };
}
