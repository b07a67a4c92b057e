import type { CurveTable } from '../curveTable.ts';
import { resampleCurve } from '../resampleCurve.ts';
import { unwrapPhase } from '../unwrapPhase.ts';

export interface NearFieldSource {
  readonly curve: CurveTable;
  /** Of one cone or one mouth, m². */
  readonly areaM2: number;
  /** Equal ones that play together; only one of them was measured. */
  readonly count: number;
}

/**
 * The far field on axis in half space from near fields of cones and ports, each taken with the microphone right at its centre and
 * with one gain for all: p = Σ n √(S/π) pN/(2r).
 *
 * For ka below 1 of the largest source (see `nearFieldLimits`); ports hear the cone beside them, which this does not undo. On the
 * first curve's frequencies; the others are resampled. Throws a RangeError without sources or for sizes that are not above 0.
 * Source: D. B. Keele, J. Audio Eng. Soc. 22 (1974) 154: a/(2r) for each, so that a port counts by √(SP/SD) against the cone.
 *
 * Example: nearFieldSum([{ curve: cone, areaM2: 0.0216, count: 1 }, { curve: port, areaM2: 0.00385, count: 1 }], 1)
 */
export function nearFieldSum(sources: readonly NearFieldSource[], distanceM: number): CurveTable {
  const [first] = sources;
  if (first === undefined || !(distanceM > 0) || sources.some(({ areaM2, count }) => !(areaM2 > 0 && count > 0)))
    throw new RangeError('A near field is summed of sources that have an area, for a distance above 0.');
  const { frequenciesHz } = first.curve;
  const re = new Float64Array(frequenciesHz.length);
  const im = new Float64Array(frequenciesHz.length);
  for (const { curve, areaM2, count } of sources) {
    const { magnitudes, phasesRad } = curve === first.curve ? curve : resampleCurve(curve, frequenciesHz);
    const factor = (count * Math.sqrt(areaM2 / Math.PI)) / (2 * distanceM);
    for (let i = 0; i < re.length; i++) {
      re[i] = re[i]! + factor * magnitudes[i]! * Math.cos(phasesRad[i]!);
      im[i] = im[i]! + factor * magnitudes[i]! * Math.sin(phasesRad[i]!);
    }
  }
  return {
    frequenciesHz,
    // Where cone and port cancel to nothing the logarithm must still exist.
    magnitudes: re.map((a, i) => Math.max(Math.hypot(a, im[i]!), Number.MIN_VALUE)),
    phasesRad: unwrapPhase(re.map((a, i) => Math.atan2(im[i]!, a))),
  };
}

/**
 * A near-field curve times the baffle's complex factor at each of its frequencies (½ at low frequencies on a cabinet, 1 above its step).
 *
 * The factor comes from the cabinet's edges (`baffleFactorInto`, point source on axis). Throws a RangeError for another length.
 */
export function withBaffleStep(
  { frequenciesHz, magnitudes, phasesRad }: CurveTable,
  factor: { readonly re: ArrayLike<number>; readonly im: ArrayLike<number> },
): CurveTable {
  if (factor.re.length !== frequenciesHz.length || factor.im.length !== frequenciesHz.length)
    throw new RangeError('The baffle’s factor is given at the frequencies of the curve.');
  const turns = unwrapPhase(frequenciesHz.map((_, i) => Math.atan2(factor.im[i]!, factor.re[i]!)));
  return {
    frequenciesHz,
    magnitudes: magnitudes.map((magnitude, i) => magnitude * Math.hypot(factor.re[i]!, factor.im[i]!)),
    phasesRad: phasesRad.map((phase, i) => phase + turns[i]!),
  };
}
