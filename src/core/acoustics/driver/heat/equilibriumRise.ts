/**
 * Rise at which a coil on a voltage source settles, K: the positive root of α x² + x = P0 R, where the power P0/(1 + α x)
 * that the hot coil still takes keeps it just as hot.
 *
 * `coldPowerW` is V²/Re with the cold resistance; `resistanceKPerW` from coil to air, or the response after a time as a guide.
 * Exact where the coil's resistance is all of the circuit; elsewhere an estimate. Source: energy balance, derived.
 * @example equilibriumRiseK(400 / 5.6, 4.2, 0.00393) // 176.9
 */
export function equilibriumRiseK(coldPowerW: number, resistanceKPerW: number, alphaPerK: number): number {
  const linearK = coldPowerW * resistanceKPerW;
  return (2 * linearK) / (1 + Math.sqrt(1 + 4 * alphaPerK * linearK));
}
