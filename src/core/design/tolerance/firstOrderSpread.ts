import { type TrialCurve, type Tried, trialLevelGradient } from '../trial/index.ts';
import { partDeviations } from './spreadDeviation.ts';
import type { PartTolerance } from './toleranceSpec.ts';

/** What tolerances do to a curve by its derivatives alone, dB over the sweep. */
export interface FirstOrderSpread {
  /** Standard deviation of one loudspeaker's level. */
  readonly deviationDb: Float64Array;
  /** Standard deviation of left less right. */
  readonly differenceDb: Float64Array;
  /** All parts at the worst end of their tolerance at once. */
  readonly extremeDb: Float64Array;
  /** Per part of the list, its own standard deviation. */
  readonly byPartDb: readonly Float64Array[];
}

/**
 * The analytic band: level = nominal + Σ S ln(1 + d), so variances add up as S² σ². Holds while S σ is well below 1 dB.
 * Source: first-order propagation of uncertainty, as in the Guide to the Expression of Uncertainty in Measurement, 5.1.2.
 * @example firstOrderSpread(tried, { kind: 'sum', points: [0] }, spec.parts).deviationDb
 */
export function firstOrderSpread(tried: Tried, curve: TrialCurve, parts: readonly PartTolerance[]): FirstOrderSpread {
  const { derivatives } = trialLevelGradient(tried, curve);
  const count = tried.trial.frequenciesHz.length;
  const variances = new Float64Array(count);
  const differences = new Float64Array(count);
  const extremeDb = new Float64Array(count);
  const byPartDb = parts.map((part) => {
    const slope = derivatives[tried.trial.variables.findIndex(({ partId }) => partId === part.partId)];
    if (slope === undefined) throw new RangeError(`The trial does not vary ${part.partId}.`);
    const { own, difference } = partDeviations(part);
    for (let f = 0; f < count; f++) {
      variances[f]! += (slope[f]! * own) ** 2;
      differences[f]! += (slope[f]! * difference) ** 2;
      extremeDb[f]! += Math.abs(slope[f]!) * part.tolerance;
    }
    return slope.map((s) => Math.abs(s) * own);
  });
  return { deviationDb: variances.map(Math.sqrt), differenceDb: differences.map(Math.sqrt), extremeDb, byPartDb };
}
