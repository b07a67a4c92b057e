/** Rules of thumb for a vented box, everything in units of the driver's Vas and fs. */
export interface RoughVented {
  readonly volumeOverVas: number;
  readonly tuningOverFs: number;
  readonly f3OverFs: number;
}

/**
 * Keele's pocket-calculator fits for QL = 7: V = 15 Qts^2.87 Vas, fB = 0.42 fs Qts^−0.9, f3 = 0.26 fs Qts^−1.4.
 *
 * Not close to exact QB3 (Qts 0.35: 32 % more volume, 11 % lower f3): for comparison with old tables.
 * Source: D. B. Keele, 1974 (constants as quoted).
 */
export const keeleVented = (qts: number): RoughVented => ({
  volumeOverVas: 15 * qts ** 2.87,
  tuningOverFs: 0.42 * qts ** -0.9,
  f3OverFs: 0.26 * qts ** -1.4,
});

/**
 * Margolis and Small's fits for QL = 7: V = 20 Qts^3.3 Vas, fB = fs (Vas/V)^0.31, f3 = fs (Vas/V)^0.44.
 *
 * Against exact QB3 for Qts 0.25 to 0.40: volume within −6 to +13 %, tuning 4.5 %, f3 3.3 %.
 * Source: G. Margolis, R. H. Small, 1981 (exponents from memory).
 */
export const margolisSmallVented = (qts: number): RoughVented => {
  const volumeOverVas = 20 * qts ** 3.3;
  return {
    volumeOverVas,
    tuningOverFs: volumeOverVas ** -0.31,
    f3OverFs: volumeOverVas ** -0.44,
  };
};
