import { alphaFromPeaks } from '../alignments/index.ts';
import { impedancePeaks } from './impedancePeaks.ts';
import type { ImpedanceSweep } from './impedanceSweep.ts';

export interface BoxStart {
  readonly alpha: number;
  /** Null: closed. */
  readonly tuningHz: number | null;
}

const LEAST_PROMINENCE = Math.log(1.06);
const clamped = (alpha: number): number => Math.min(30, Math.max(0.05, alpha));

/**
 * Rough compliance ratio and tuning of a box from its impedance: twin peaks and the valley between for a vented one, the peak's
 * rise over fs for a closed one. `seen`: the peaks were there; otherwise a set of guesses to try.
 */
export function boxStarts(
  sweep: ImpedanceSweep,
  fsHz: number,
  kind: 'vented' | 'closed',
): { readonly seen: boolean; readonly starts: readonly BoxStart[] } {
  const { frequenciesHz, magnitudesOhm } = sweep;
  const peaks = impedancePeaks(sweep, LEAST_PROMINENCE);
  if (kind === 'closed') {
    const [peak] = peaks;
    if (peak !== undefined)
      return { seen: true, starts: [{ alpha: clamped((peak.atHz / fsHz) ** 2 - 1), tuningHz: null }] };
    return { seen: false, starts: [0.3, 1, 3].map((alpha) => ({ alpha, tuningHz: null })) };
  }
  const [low, high] = peaks.slice(0, 2).sort((a, b) => a.index - b.index);
  if (low === undefined || high === undefined) {
    const starts = [0.5, 1.5, 4].flatMap((alpha) => [0.7, 1, 1.4].map((h) => ({ alpha, tuningHz: h * fsHz })));
    return { seen: false, starts };
  }
  let valley = low.index;
  for (let i = low.index; i <= high.index; i++) if (magnitudesOhm[i]! < magnitudesOhm[valley]!) valley = i;
  const tuningHz = frequenciesHz[valley]!;
  const alpha = clamped(alphaFromPeaks({ lowerHz: low.atHz, upperHz: high.atHz }, tuningHz));
  return { seen: true, starts: [{ alpha, tuningHz }] };
}
