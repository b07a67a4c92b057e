/**
 * A core that saturates softly: flux linkage λ(i) = L_air i + (L0 − L_air) I_s tanh(i/I_s). Inductances in H, peak current `kneeA` in A.
 * A stand-in that has the right slope at both ends, not a law of a material (derived).
 */
export interface SaturatingCoil {
  readonly henry: number;
  readonly airHenry: number;
  readonly kneeA: number;
}

const STEPS = 64;

/** Slope of the flux linkage at an instant's current, H. */
export const incrementalInductanceH = ({ henry, airHenry, kneeA }: SaturatingCoil, currentA: number): number =>
  airHenry + (henry - airHenry) / Math.cosh(currentA / kneeA) ** 2;

/**
 * Inductance for the first harmonic of the voltage at a sine of `peakA`: what a sweep at that level should use, H.
 *
 * Describing function (2/(π I)) ∫ λ(I sin θ) sin θ dθ over half a period, by equally spaced points of a smooth periodic function: 1e-9
 * up to 4 knees, 1e-3 at 30. Holds for a current that stays a sine.
 * @example describingInductanceH({ henry: 3e-3, airHenry: 0.2e-3, kneeA: 10 }, 8)
 */
export const describingInductanceH = (coil: SaturatingCoil, peakA: number): number =>
  peakA === 0 ? coil.henry : coil.airHenry + (coil.henry - coil.airHenry) * harmonicShare(coil, peakA, 1);

/**
 * Third harmonic of the voltage over the first, a ratio, at a sine of current of `peakA`: three times the share of the flux, for the voltage
 * is its slope.
 * @example thirdHarmonicRatio({ henry: 3e-3, airHenry: 0.2e-3, kneeA: 10 }, 3)
 */
export function thirdHarmonicRatio(coil: SaturatingCoil, peakA: number): number {
  if (peakA === 0) return 0;
  const third = (coil.henry - coil.airHenry) * harmonicShare(coil, peakA, 3);
  return Math.abs((3 * third) / describingInductanceH(coil, peakA));
}

/** Coefficient of sin nθ of I_s tanh((I/I_s) sin θ), over I. */
function harmonicShare({ kneeA }: SaturatingCoil, peakA: number, n: number): number {
  const x = peakA / kneeA;
  // Half a period is enough: the other half repeats it with both signs turned.
  const steps = STEPS + Math.ceil(16 * x);
  let sum = 0;
  for (let k = 0; k < steps; k++) {
    const angle = (Math.PI * (k + 0.5)) / steps;
    sum += Math.tanh(x * Math.sin(angle)) * Math.sin(n * angle);
  }
  return (2 * sum) / (steps * x);
}

/**
 * Peak current at which the slope of the flux linkage has fallen by a share (0 to less than 1 − L_air/L0), A: the rating is at 10 %. null where the
 * core's part is too small for that fall.
 * @example currentAtDropA({ henry: 1e-3, airHenry: 0, kneeA: 10 }, 0.1) // 3.27
 */
export function currentAtDropA({ henry, airHenry, kneeA }: SaturatingCoil, drop: number): number | null {
  const left = ((1 - drop) * henry - airHenry) / (henry - airHenry);
  return left > 0 ? kneeA * Math.acosh(1 / Math.sqrt(left)) : null;
}

/**
 * The knee of a coil whose data state a current for 10 % less inductance (or another share), A; the inverse of `currentAtDropA`.
 * @example kneeFromRatingA(1e-3, 0, 3.27, 0.1) // 10
 */
export function kneeFromRatingA(henry: number, airHenry: number, ratedA: number, drop: number): number | null {
  const perKnee = currentAtDropA({ henry, airHenry, kneeA: 1 }, drop);
  return perKnee === null ? null : ratedA / perKnee;
}
