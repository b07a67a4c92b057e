import { type Estimate, estimateOf } from '../../math/index.ts';
import type { BoxFit } from './boxFit.ts';

export interface FillingEffect {
  /** Apparent volume after over before: 1.00 to about 1.25 for fibre. */
  readonly volume: Estimate;
  readonly tuning: Estimate;
  /** 1/Q that was added, all losses together, at each tuning; null where a total is not known. */
  readonly addedLoss: number | null;
  /** Share of the added loss that is absorption, where both fits separate their losses; null otherwise. */
  readonly addedAbsorption: number | null;
}

/** Quantities of a ratio are known together. */
const TOGETHER = 2;
const MANY = 1000;

/**
 * What filling did, from fits of one box with one driver before and after: the driver's Vas cancels in the ratio of volumes.
 *
 * Example: compareBoxes(empty, stuffed).volume.value is 1.15 for a box that acts 15 % larger.
 */
export function compareBoxes(before: BoxFit, after: BoxFit): FillingEffect {
  const ratio = (a: Estimate, b: Estimate): Estimate =>
    estimateOf(b.value / a.value, Math.hypot(a.relativeSd, b.relativeSd), MANY, TOGETHER);
  const inverse = ({ totalQ, losses }: BoxFit): number | null =>
    totalQ === null ? (losses.length === 0 ? 0 : null) : 1 / totalQ.value;
  const [was, is] = [inverse(before), inverse(after)];
  const absorbed = ({ losses }: BoxFit): number =>
    1 / (losses.find(({ loss }) => loss === 'absorption')?.q?.value ?? Number.POSITIVE_INFINITY);
  const addedLoss = was === null || is === null ? null : is - was;
  return {
    volume: ratio(after.alpha, before.alpha),
    tuning: ratio(before.tuningHz, after.tuningHz),
    addedLoss,
    addedAbsorption:
      before.separated && after.separated && addedLoss !== null ? absorbed(after) - absorbed(before) : null,
  };
}
