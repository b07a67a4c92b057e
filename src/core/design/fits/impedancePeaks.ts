import type { ImpedanceSweep } from './impedanceSweep.ts';

export interface ImpedancePeak {
  readonly atHz: number;
  readonly ohm: number;
  readonly index: number;
  /** ln of its height over the higher of the two valleys beside it. */
  readonly prominence: number;
}

/**
 * The peaks of an impedance by prominence, the most prominent first; the ends of the sweep are none.
 *
 * A valley reaches from the peak to the next higher point or to the end of the sweep. `leastProminence` is ln of a ratio; noise of
 * 1 % makes peaks up to about 0.05.
 */
export function impedancePeaks(
  { frequenciesHz, magnitudesOhm }: ImpedanceSweep,
  leastProminence: number,
): ImpedancePeak[] {
  const peaks: ImpedancePeak[] = [];
  const n = magnitudesOhm.length;
  for (let i = 1; i < n - 1; i++) {
    const ohm = magnitudesOhm[i]!;
    if (!(ohm > magnitudesOhm[i - 1]! && ohm >= magnitudesOhm[i + 1]!)) continue;
    let left = ohm;
    for (let k = i - 1; k >= 0 && magnitudesOhm[k]! <= ohm; k--) left = Math.min(left, magnitudesOhm[k]!);
    let right = ohm;
    for (let k = i + 1; k < n && magnitudesOhm[k]! <= ohm; k++) right = Math.min(right, magnitudesOhm[k]!);
    const prominence = Math.log(ohm / Math.max(left, right));
    if (prominence >= leastProminence) peaks.push({ atHz: frequenciesHz[i]!, ohm, index: i, prominence });
  }
  return peaks.sort((a, b) => b.prominence - a.prominence);
}
