import { pistonDipoleLengthM } from './dipoleLength.ts';
import { type BafflePlace, baffleRadiusM, edgeDistanceM, keptOnBaffle, type OpenBaffle } from './openBaffle.ts';

/** Detours over the edge of an open baffle: extra lengths in the listener's direction, with weights that add to 1 (some are negative). */
export interface OpenBafflePaths {
  readonly extraM: Float64Array;
  readonly weights: Float64Array;
  /** The stretch of lengths for which each path stands; it fades out where that spans many wavelengths. */
  readonly spreadM: Float64Array;
  /** 1 in front of the panel, −1 behind it, where everything is the same with the sign turned. */
  readonly side: 1 | -1;
}

const SPOKES = 24;
const SPOKES_TOGETHER = 3;
/** Ways along the edge to where the sound leaves it a second time, in radii of the equal circle, and their shares: fitted to the disc. */
const SECOND_EXTRAS = [0.5, 1, 2] as const;
const SECOND_SHARES = [0.42, 0.34, 0.24] as const;

/**
 * The ways in which a small or piston-like driver's front and back sound reach a far listener over the edge of an open baffle.
 *
 * First over the edge once: its points seen from the driver, each with the weight cos θ/(1 − sin θ cos ψ) of the classical edge wave
 * (Maggi, Rubinowicz), ψ between edge point and listener; the points are spaced so that all weights are equal. Then a second time, with
 * the sign turned, in the amount that makes the low-frequency pressure that of `pistonDipoleLengthM` exactly.
 * `direction` to the listener: any length, z along the panel's normal. Driver's place on the panel from its centre, m, kept a millimetre
 * inside the edge. Straight thin edges, listener far against the panel, no floor (`standingOnFloor`). Used by `dipoleFactorInto`, which
 * tells the error.
 *
 * Example: openBafflePaths({ kind: 'round', radiusM: 0.25 }, { xM: 0, yM: 0 }, 0, { xM: 0, yM: 0, zM: 1 }).side = 1
 */
export const openBafflePaths = (
  baffle: OpenBaffle,
  source: BafflePlace,
  pistonRadiusM: number,
  direction: { readonly xM: number; readonly yM: number; readonly zM: number },
): OpenBafflePaths => {
  const place = keptOnBaffle(baffle, source);
  const size = Math.hypot(direction.xM, direction.yM, direction.zM);
  const cosine = Math.abs(direction.zM) / size;
  const sine = Math.sqrt(1 - cosine * cosine);
  const towards = Math.atan2(direction.yM, direction.xM);
  const first = Array.from({ length: SPOKES }, (_, i) => {
    const even = (2 * Math.PI * (i + 0.5)) / SPOKES;
    // Equal steps of `even` carry equal weight: the map between true and eccentric anomaly.
    const psi = Math.atan2(cosine * Math.sin(even), Math.cos(even) + sine);
    const edgeM = edgeDistanceM(baffle, place, Math.cos(towards + psi), Math.sin(towards + psi));
    return (edgeM * cosine * cosine) / (1 + sine * Math.cos(even));
  });
  const meanM = first.reduce((sum, length) => sum + length, 0) / SPOKES;
  const radiusM = baffleRadiusM(baffle);
  const extraMeanM = radiusM * SECOND_EXTRAS.reduce((sum, extra, i) => sum + extra * SECOND_SHARES[i]!, 0);
  const again = (meanM - (pistonDipoleLengthM(baffle, place, pistonRadiusM) * cosine) / 2) / extraMeanM;
  const paths: { extraM: number; weight: number; spreadM: number }[] = first.map((extraM, i) => ({
    extraM,
    weight: (1 + again) / SPOKES,
    spreadM: Math.abs(first[(i + 1) % SPOKES]! - first[(i + SPOKES - 1) % SPOKES]!) / 2,
  }));
  for (let i = 0; i < SPOKES; i += SPOKES_TOGETHER) {
    const lengths = first.slice(i, i + SPOKES_TOGETHER);
    const middleM = lengths.reduce((sum, length) => sum + length, 0) / SPOKES_TOGETHER;
    SECOND_EXTRAS.forEach((extra, k) => {
      paths.push({
        extraM: middleM + extra * radiusM,
        weight: (-again * SECOND_SHARES[k]! * SPOKES_TOGETHER) / SPOKES,
        spreadM: Math.max(...lengths) - Math.min(...lengths),
      });
    });
  }
  return {
    extraM: Float64Array.from(paths, (path) => path.extraM),
    weights: Float64Array.from(paths, (path) => path.weight),
    spreadM: Float64Array.from(paths, (path) => path.spreadM),
    side: direction.zM >= 0 ? 1 : -1,
  };
};
