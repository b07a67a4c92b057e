import { add, type Complex, exponential, magnitude, multiply, phase } from '../math/complex.ts';

/** Two point sources one above the other, far away: what reaches a listener at some angle. */
export interface TwoSources {
  /** Their contributions on the axis, re what one source in its passband gives. */
  readonly upper: Complex;
  readonly lower: Complex;
  /** Distance between them in wavelengths. */
  readonly spacingWavelengths: number;
}

/**
 * Sum at `angleRad` from the axis, positive upwards, the plane midway between the sources as reference:
 * lower exp(-j x) + upper exp(+j x), x = π (d/λ) sin θ.
 * For distances far greater than the spacing, without the directivity of the sources themselves.
 * Source: S. H. Linkwitz, "Active Crossover Networks for Noncoincident Drivers", JAES 24 (1), 1976.
 * @example twoSourceSum({ upper, lower, spacingWavelengths: 1 }, 0.26)
 */
export function twoSourceSum({ upper, lower, spacingWavelengths }: TwoSources, angleRad: number): Complex {
  const x = Math.PI * spacingWavelengths * Math.sin(angleRad);
  return add(multiply(lower, exponential({ re: 0, im: -x })), multiply(upper, exponential({ re: 0, im: x })));
}

/**
 * The angle of the greatest sum and that sum's magnitude. Both add in phase where the lead of the upper source,
 * arg(upper/lower), and the path difference make whole turns: sin θ = (m - lead/2π) / (d/λ); of several such angles the
 * one nearest to the axis is given, and where there is none, the end of the half circle that is louder.
 * Source: R. M. Bullock, "Loudspeaker-Crossover Systems: An Optimal Choice", JAES 30 (7/8), 1982 (tilt of the lobe).
 * @example twoSourceLobe({ upper, lower, spacingWavelengths: 1 }).angleRad
 */
export function twoSourceLobe(sources: TwoSources): { readonly angleRad: number; readonly magnitude: number } {
  const { upper, lower, spacingWavelengths } = sources;
  const leadTurns = (phase(upper) - phase(lower)) / (2 * Math.PI);
  const turns = Math.round(leadTurns) - leadTurns;
  const sine = turns === 0 ? 0 : turns / spacingWavelengths;
  if (Math.abs(sine) <= 1) return { angleRad: Math.asin(sine), magnitude: magnitude(upper) + magnitude(lower) };
  const angleRad = (Math.sign(sine) * Math.PI) / 2;
  return { angleRad, magnitude: magnitude(twoSourceSum(sources, angleRad)) };
}

/**
 * Angle from the axis at which two equal sources in phase have fallen to `share` of their sum on the axis (0: the first
 * null; 0.5: 6.02 dB down); null where they never do. cos(π (d/λ) sin θ) = share.
 * @example twoSourceAngle(1, 0) // 30 degrees in radians
 */
export function twoSourceAngle(spacingWavelengths: number, share: number): number | null {
  const sine = Math.acos(share) / (Math.PI * spacingWavelengths);
  return sine <= 1 ? Math.asin(sine) : null;
}
