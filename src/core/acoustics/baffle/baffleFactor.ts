import { scratchBuffers } from '../../math/scratchBuffers.ts';
import { pistonDirectivitiesInto } from '../radiation/pistonDirectivity.ts';
import type { EdgePaths } from './edgePaths.ts';
import { edgeSumInto } from './edgeSum.ts';

const scratch = scratchBuffers();

/**
 * Pressure of a source on a cabinet's front relative to a point source of the same volume velocity in an infinite baffle
 * (p = jωρU exp(−jkr)/(2πr)), complex, for every angular frequency: directivity and baffle step together.
 *
 * In front: D(θ) − ½ D(90°) Σ w exp(−jk·extra); behind: ½ D(90°) Σ w exp(−jk·extra); D = 2 J1(ka sin θ)/(ka sin θ). The piston
 * reaches the edges along the baffle, hence D(90°). Low frequencies: ½ (full space, −6.02 dB); high: D(θ) in front.
 * `pistonRadiusM` of the equivalent flat piston (0 for a point source), `offAxisDeg` between the front's normal and the path,
 * `omegas` rad/s, `out` as long. Range and measured error: `edgePaths`.
 *
 * Example: for a point source at 1 Hz the factor is 0.5.
 */
export const baffleFactorInto = (
  out: { readonly re: Float64Array; readonly im: Float64Array },
  edges: EdgePaths,
  source: { readonly pistonRadiusM: number; readonly offAxisDeg: number },
  omegas: Float64Array,
  soundSpeedMPerS: number,
): void => {
  const { re, im } = out;
  const { pistonRadiusM, offAxisDeg } = source;
  const along = scratch.take(omegas.length);
  pistonDirectivitiesInto(along, omegas, pistonRadiusM / soundSpeedMPerS);
  edgeSumInto(re, im, edges, omegas, 1 / soundSpeedMPerS);
  const share = edges.direct === 1 ? -0.5 : 0.5;
  for (let i = 0; i < omegas.length; i++) {
    re[i] = share * along[i]! * re[i]!;
    im[i] = share * along[i]! * im[i]!;
  }
  if (edges.direct === 1) {
    const offAxis = along;
    const sine = Math.sin((offAxisDeg * Math.PI) / 180);
    pistonDirectivitiesInto(offAxis, omegas, (pistonRadiusM * sine) / soundSpeedMPerS);
    for (let i = 0; i < omegas.length; i++) re[i] = re[i]! + offAxis[i]!;
  }
  scratch.release();
};
