/** The least impedance over the rated one. Source: IEC 60268-5 (rated impedance), as trade dictionaries quote it. */
const LEAST_OVER_RATED = 0.8;
/** Ignores the last bits of a value that was entered as a decimal fraction. */
const ROUNDING = 1e-9;

/**
 * The greatest rated impedance that a loudspeaker with this least impedance modulus may claim, ohm: least / 0.8.
 *
 * Example: `greatestRatedImpedanceOhm(6.4)` is 8.
 */
export const greatestRatedImpedanceOhm = (leastOhm: number): number => leastOhm / LEAST_OVER_RATED;

/** The least impedance modulus that a rating allows, ohm: 0.8 rated. */
export const leastAllowedOhm = (ratedOhm: number): number => LEAST_OVER_RATED * ratedOhm;

/** Does the least impedance modulus in the rated frequency range reach 80 % of the rated impedance (ohm both)? */
export const mayBeRated = (leastOhm: number, ratedOhm: number): boolean =>
  leastOhm >= leastAllowedOhm(ratedOhm) * (1 - ROUNDING);
