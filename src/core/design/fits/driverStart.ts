import { threePointImpedance } from '../../acoustics/index.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { type ImpedancePeak, impedancePeaks } from './impedancePeaks.ts';
import type { ImpedanceSweep } from './impedanceSweep.ts';

export interface DriverStart {
  readonly reOhm: number;
  readonly fsHz: number;
  readonly qms: number;
  readonly qes: number;
  /** Reactance of the coil at the sweep's upper end. */
  readonly coilOhm: number;
  readonly coilOmega: number;
  /** Points within the peak's half width, where |Z| is above √(Re Zmax). */
  readonly pointsInPeak: number;
  readonly peak: ImpedancePeak;
}

const FEWEST_POINTS = 8;
const LEAST_PROMINENCE = Math.log(1.06);

/**
 * Rough values of a driver in free air, read off its impedance: the most prominent peak, the valley beside it, the half width.
 *
 * Problems: `fits.few-points` below 8 points, `fits.no-peak` where no point stands out by 6 %, as when the resonance lies outside.
 */
export function driverStart(sweep: ImpedanceSweep): Result<DriverStart> {
  const { frequenciesHz, magnitudesOhm } = sweep;
  const n = frequenciesHz.length;
  const place = { kind: 'curve' } as const;
  if (n < FEWEST_POINTS) return fail(problem('fits.few-points', place, { count: n, needed: FEWEST_POINTS }));
  const [peak] = impedancePeaks(sweep, LEAST_PROMINENCE);
  if (peak === undefined)
    return fail(problem('fits.no-peak', place, { fromHz: frequenciesHz[0]!, toHz: frequenciesHz[n - 1]! }));
  const least = magnitudesOhm.reduce((a, b) => Math.min(a, b), peak.ohm);
  const reOhm = 0.97 * least;
  const side = Math.sqrt(reOhm * peak.ohm);
  let low = peak.index;
  while (low > 0 && magnitudesOhm[low]! > side) low--;
  let high = peak.index;
  while (high < n - 1 && magnitudesOhm[high]! > side) high++;
  const found = { low: magnitudesOhm[low]! <= side, high: magnitudesOhm[high]! <= side };
  const crossing = (a: number, b: number): number => {
    const share = Math.log(side / magnitudesOhm[a]!) / Math.log(magnitudesOhm[b]! / magnitudesOhm[a]!);
    return frequenciesHz[a]! * (frequenciesHz[b]! / frequenciesHz[a]!) ** share;
  };
  const upperHz = found.high ? crossing(high, high - 1) : frequenciesHz[n - 1]!;
  const lowerHz = found.low ? crossing(low, low + 1) : peak.atHz ** 2 / upperHz;
  const { qms, qes } = threePointImpedance(reOhm, peak.ohm, lowerHz, found.high ? upperHz : peak.atHz ** 2 / lowerHz);
  const top = magnitudesOhm[n - 1]!;
  return succeed({
    reOhm,
    fsHz: peak.atHz,
    qms,
    qes,
    coilOhm: Math.sqrt(Math.max(top ** 2 - reOhm ** 2, (0.02 * reOhm) ** 2)),
    coilOmega: 2 * Math.PI * frequenciesHz[n - 1]!,
    pointsInPeak: high - low - 1,
    peak,
  });
}
