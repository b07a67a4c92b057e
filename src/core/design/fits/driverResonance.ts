import { totalQ } from '../../acoustics/index.ts';
import { type Estimate, estimateOf, fitEstimate } from '../../math/index.ts';
import type { CoilCandidate } from './coilChoice.ts';
import { FS_AT, QES_AT, QMS_AT, RE_AT } from './driverModel.ts';

/** Re (ohm), fs (Hz) and the Qs of a driver in free air, each with its 95 % interval. */
export interface DriverResonance {
  readonly reOhm: Estimate;
  readonly fsHz: Estimate;
  readonly qms: Estimate;
  readonly qes: Estimate;
  readonly qts: Estimate;
}

/**
 * Resonance and Re out of a fit, or null where the data do not fix one of them.
 *
 * What `rivals`, other forms of coil that explain the data as well, find differently is added to the deviation.
 */
export function resonanceOf(source: CoilCandidate, rivals: readonly CoilCandidate[] = []): DriverResonance | null {
  const { fit, inflation } = source.result;
  const read = (quantity: (values: ArrayLike<number>) => number, slopes: readonly number[]): Estimate | null => {
    const value = quantity(fit.values);
    const all = Array.from({ length: fit.values.length }, (_, j) => slopes[j] ?? 0);
    const own = fitEstimate(fit, value, all, inflation);
    if (own === null || rivals.length === 0) return own;
    const apart = Math.max(...rivals.map(({ result }) => Math.abs(Math.log(quantity(result.fit.values) / value))));
    return estimateOf(value, Math.hypot(own.relativeSd, apart), fit.freedom, fit.held.filter((is) => !is).length);
  };
  const single = (at: number): Estimate | null =>
    read(
      (values) => values[at]!,
      Array.from({ length: at + 1 }, (_, j) => (j === at ? 1 : 0)),
    );
  const [reOhm, fsHz, qms, qes] = [RE_AT, FS_AT, QMS_AT, QES_AT].map(single);
  const total = (values: ArrayLike<number>): number => totalQ(values[QMS_AT]!, values[QES_AT]!);
  const shares = [0, 0, 0, 0];
  shares[QMS_AT] = total(fit.values) / fit.values[QMS_AT]!;
  shares[QES_AT] = total(fit.values) / fit.values[QES_AT]!;
  const qts = read(total, shares);
  return reOhm && fsHz && qms && qes && qts ? { reOhm, fsHz, qms, qes, qts } : null;
}
