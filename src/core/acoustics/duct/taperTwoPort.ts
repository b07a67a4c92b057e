import { add, divide, multiply, scale, squareRoot, subtract } from '../../math/complex.ts';
import { hyperbolicCosine, hyperbolicSine } from '../../math/hyperbolic.ts';
import type { LineConstants } from './lineConstants.ts';
import { cascadeTwoPorts, type TwoPort } from './twoPort.ts';

/** A duct whose section changes along it; both functions take the share (0 near, 1 far) of the way. */
export interface Taper {
  readonly lengthM: number;
  /** At most quadratic in the share, as all straight-sided ducts are. */
  readonly areaM2: (share: number) => number;
  readonly constants: (share: number) => LineConstants;
}

// A slice is a cone between its true end areas, q = √(S2/S1), s = (q − 1)/h: with Z' = ζ/S and Y' = ηS the function p√S obeys
// ψ'' = ζη ψ there, so A = q cosh Γh − (s/Γ) sinh Γh, B = ζ q sinh Γh/(Γ S2), C = (S1/ζ)[(qΓ − s²/Γ) sinh Γh + h s² cosh Γh],
// D = (cosh Γh + (s/Γ) sinh Γh)/q. Losses are those of its middle; ζ and η are scaled so that its whole mass ∫ dx/S and volume ∫ S dx
// are those of the true section (by Simpson's rule for both) and not of the cone. A steady pressure passes unchanged, as it must.
const sliceTwoPort = (taper: Taper, from: number, to: number): TwoPort => {
  const h = (to - from) * taper.lengthM;
  const middle = (from + to) / 2;
  const [near, mid, far] = [taper.areaM2(from), taper.areaM2(middle), taper.areaM2(to)];
  const { series, shunt } = taper.constants(middle);
  const coneMid = ((Math.sqrt(near) + Math.sqrt(far)) / 2) ** 2;
  const massRatio = (1 / near + 4 / mid + 1 / far) / (1 / near + 4 / coneMid + 1 / far);
  const volumeRatio = (near + 4 * mid + far) / (near + 4 * coneMid + far);
  const zeta = scale(series, mid * massRatio);
  const gamma = squareRoot(scale(multiply(series, shunt), massRatio * volumeRatio));
  const angle = scale(gamma, h);
  const cosine = hyperbolicCosine(angle);
  const sine = hyperbolicSine(angle);
  const sineOverGamma = divide(sine, gamma);
  const q = Math.sqrt(far / near);
  const s = (q - 1) / h;
  const bulge = add(scale(multiply(gamma, sine), q), scale(subtract(scale(cosine, h), sineOverGamma), s * s));
  return {
    a: subtract(scale(cosine, q), scale(sineOverGamma, s)),
    b: scale(multiply(zeta, sineOverGamma), q / far),
    c: scale(divide(bulge, zeta), near),
    d: scale(add(cosine, scale(sineOverGamma, s)), 1 / q),
  };
};

/**
 * Two-port of a straight-sided tapering duct with losses, by `slices` equal slices; AD − BC = 1 to rounding.
 *
 * A cone without losses is exact in one slice; otherwise the error goes as 1/slices² (sizes: `ductTwoPort`).
 * Throws a RangeError below one slice. Source: A. H. Benade 1988 as `coneTwoPort`; slices derived above.
 */
export const taperTwoPort = (taper: Taper, slices: number): TwoPort => {
  if (!(slices >= 1)) throw new RangeError('a tapering duct needs at least one slice');
  let whole = sliceTwoPort(taper, 0, 1 / slices);
  for (let n = 1; n < slices; n++) whole = cascadeTwoPorts(whole, sliceTwoPort(taper, n / slices, (n + 1) / slices));
  return whole;
};
