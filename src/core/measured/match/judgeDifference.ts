import type { LevelDifference } from './levelDifference.ts';

/** How far two curves may lie apart in a band, to either side, dB. */
export interface WindowBand {
  readonly fromHz: number;
  readonly toHz: number;
  readonly limitDb: number;
}

/** A run of frequencies at which the limit is passed, to one side. */
export interface Excess {
  readonly fromHz: number;
  readonly toHz: number;
  /** Signed: the first curve less the second. */
  readonly worstDb: number;
  readonly atHz: number;
  readonly meanDb: number;
  readonly limitDb: number;
}

export interface Judgement {
  readonly within: boolean;
  /** The place with the greatest difference over its limit, inside or not; null where no band covers the curves. */
  readonly worst: { readonly atHz: number; readonly differenceDb: number; readonly limitDb: number } | null;
  /** The greatest excess first. */
  readonly excesses: readonly Excess[];
  /** Root of the mean square over the octaves that the window covers. */
  readonly rmsDb: number;
}

/**
 * Judges a difference of levels against a window of bands; where bands overlap, the narrowest limit holds, outside of all nothing is judged.
 *
 * Example: a difference of 1.4 dB above 4 kHz against 1 dB gives one excess from 4 kHz.
 */
export function judgeDifference(
  { frequenciesHz, differenceDb }: LevelDifference,
  window: readonly WindowBand[],
): Judgement {
  const excesses: Excess[] = [];
  let worst: Judgement['worst'] = null;
  let squares = 0;
  let count = 0;
  let run: { from: number; limitDb: number } | null = null;
  const close = (to: number): void => {
    if (run === null) return;
    const inside = differenceDb.subarray(run.from, to);
    let peak = 0;
    for (let k = 1; k < inside.length; k++) if (Math.abs(inside[k]!) > Math.abs(inside[peak]!)) peak = k;
    excesses.push({
      fromHz: frequenciesHz[run.from]!,
      toHz: frequenciesHz[to - 1]!,
      worstDb: inside[peak]!,
      atHz: frequenciesHz[run.from + peak]!,
      meanDb: inside.reduce((sum, db) => sum + db, 0) / inside.length,
      limitDb: run.limitDb,
    });
    run = null;
  };
  for (let i = 0; i < frequenciesHz.length; i++) {
    const db = differenceDb[i]!;
    const limits = window
      .filter(({ fromHz, toHz }) => fromHz <= frequenciesHz[i]! && frequenciesHz[i]! <= toHz)
      .map(({ limitDb }) => limitDb);
    const limitDb = limits.length === 0 ? null : Math.min(...limits);
    if (limitDb !== null) {
      squares += db * db;
      count++;
      if (worst === null || Math.abs(db) - limitDb > Math.abs(worst.differenceDb) - worst.limitDb)
        worst = { atHz: frequenciesHz[i]!, differenceDb: db, limitDb };
    }
    const outside = limitDb !== null && Math.abs(db) > limitDb;
    if (run !== null && (!outside || limitDb !== run.limitDb || db > 0 !== differenceDb[i - 1]! > 0)) close(i);
    if (outside && run === null) run = { from: i, limitDb };
  }
  close(frequenciesHz.length);
  excesses.sort((a, b) => Math.abs(b.worstDb) - b.limitDb - (Math.abs(a.worstDb) - a.limitDb));
  return { within: excesses.length === 0, worst, excesses, rmsDb: count === 0 ? 0 : Math.sqrt(squares / count) };
}
