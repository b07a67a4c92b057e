// 39 equal steps of ratio 92^(1/39) lie between 5 mil (no. 36) and 460 mil (no. 0000), whose number here is −3.
const THINNEST_M = 0.127e-3;
const STEP = 92 ** (1 / 39);

/**
 * Bare diameter of a wire by its American gauge, m. 0, −1, −2 and −3 stand for 0, 00, 000 and 0000; fractions are allowed.
 *
 * Printed tables round to a thousandth of an inch, 0.2 % from this. Source: ASTM B258, d = 0.127 mm · 92^((36 − n)/39).
 * @example gaugeDiameterM(18) // 1.0237e-3
 */
export const gaugeDiameterM = (gauge: number): number => THINNEST_M * STEP ** (36 - gauge);

/**
 * American gauge of a bare diameter in m (above 0), as a real number: round it for the nearest.
 * @example diameterGauge(1.0237e-3) // 18
 */
export const diameterGauge = (diameterM: number): number => 36 - Math.log(diameterM / THINNEST_M) / Math.log(STEP);
