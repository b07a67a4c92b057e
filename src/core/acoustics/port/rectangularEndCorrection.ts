/**
 * End correction of a rectangular mouth in a wide flat baffle, m, for uniform air speed across it; sides in m, either order.
 *
 * δ = I/(2π a b), I = 2 [a² b asinh(b/a) + a b² asinh(a/b) + (a³ + b³)/3 − (a² + b²)^1.5/3]: the mean of 1/R over the mouth
 * with itself, low-frequency limit, exact. A real slot, whose speed is not uniform, lies some 3 % lower (as for the circle).
 * Source: derived from the half-space Green's function (Rayleigh's integral); checked by a double quadrature.
 *
 * Example: rectangularEndCorrectionM(0.02, 0.2) = 0.0225
 */
export const rectangularEndCorrectionM = (sideAM: number, sideBM: number): number => {
  const [a, b] = [sideAM, sideBM];
  const diagonal = Math.hypot(a, b);
  const sum = a * a * b * Math.asinh(b / a) + a * b * b * Math.asinh(a / b) + (a ** 3 + b ** 3) / 3 - diagonal ** 3 / 3;
  return sum / (Math.PI * a * b);
};

/** The same correction in units of the short side and of the radius of the circle of equal area. */
export const rectangularEndFactors = (
  sideA: number,
  sideB: number,
): { readonly overShortSide: number; readonly overEquivalentRadius: number } => {
  const correction = rectangularEndCorrectionM(sideA, sideB);
  return {
    overShortSide: correction / Math.min(sideA, sideB),
    overEquivalentRadius: correction / Math.sqrt((sideA * sideB) / Math.PI),
  };
};
