/**
 * Resistance of a hot coil over that of the cold one: 1 + α ΔT.
 *
 * `riseK` above the temperature at which the cold value holds, `alphaPerK` re 20 °C (see `COIL_METALS`). A cold state 10 K above
 * 20 °C makes the true rise of resistance 4 % smaller than this. Source: the definition of the coefficient, IEC 60028 for copper.
 * @example hotResistanceRatio(100, 0.00393) // 1.393
 */
export const hotResistanceRatio = (riseK: number, alphaPerK: number): number => 1 + alphaPerK * riseK;

/**
 * Loss of level at constant voltage where the coil's resistance is nearly all of the impedance, dB, positive: 20 lg(1 + α ΔT).
 *
 * An upper guide away from there: at resonance the level falls less, and behind a crossover both change their shape. What a hot
 * coil does to a whole loudspeaker is found by solving it again with the hot resistance.
 * @example hotCoilLossDb(180, 0.00393) // 4.65
 */
export const hotCoilLossDb = (riseK: number, alphaPerK: number): number =>
  20 * Math.log10(hotResistanceRatio(riseK, alphaPerK));

/** Resistance of the hot coil, ohm. */
export const hotCoilOhm = (coldOhm: number, riseK: number, alphaPerK: number): number =>
  coldOhm * hotResistanceRatio(riseK, alphaPerK);
