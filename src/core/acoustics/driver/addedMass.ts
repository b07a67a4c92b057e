/**
 * Moving mass and compliance from the resonance with and without a known mass fixed to the cone (free air, both in Hz, mass kg).
 *
 * Mms = Ma/((fs/f')² − 1), Cms = 1/((2πfs)² Mms). Relative error of Mms from a frequency error: 2 (df/f) x²/(x² − 1), x = fs/f'; take
 * Ma near Mms. Throws a RangeError unless the loaded resonance is lower. Source: common practice, derived from fs² M C = const.
 *
 * Example: 35 Hz, 28 Hz with 10 g: Mms = 17.8 g
 */
export const movingMassFromAddedMass = (
  fsHz: number,
  loadedFsHz: number,
  addedKg: number,
): { readonly mmsKg: number; readonly cmsMPerN: number } => {
  if (!(fsHz > loadedFsHz && addedKg > 0)) throw new RangeError('the added mass must lower the resonance');
  const mmsKg = addedKg / ((fsHz / loadedFsHz) ** 2 - 1);
  return { mmsKg, cmsMPerN: 1 / ((2 * Math.PI * fsHz) ** 2 * mmsKg) };
};
