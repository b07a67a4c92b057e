import type { AirProperties } from '../../acoustics/airProperties.ts';
import { findMinimum } from '../../math/findMinimum.ts';
import { lossOf, type VentedBox, ventedCoefficients, ventedHalfPower } from './ventedTransfer.ts';

/**
 * Cone excursion of a vented box re that at zero frequency without the box: |s²TB² + s TB/QL + 1|/|D(s)|, frequency in units of fs.
 *
 * Leakage losses only, no coil inductance. Source: R. H. Small, "Vented-Box Loudspeaker Systems", 1973, part I (from memory).
 */
export const ventedExcursionRatio = (box: VentedBox, frequencyOverFs: number): number => {
  const nu = frequencyOverFs / box.h;
  const w = frequencyOverFs / Math.sqrt(box.h);
  const { a1, a2, a3 } = ventedCoefficients(box);
  return Math.hypot(1 - nu * nu, nu * lossOf(box.ql)) / Math.hypot(w ** 4 - a2 * w * w + 1, a3 * w - a1 * w ** 3);
};

/** The greatest excursion above the tuning, in the same units, and where it lies in units of fs. */
export const ventedExcursionPeak = (box: VentedBox): { readonly ratio: number; readonly frequencyOverFs: number } => {
  const found = findMinimum((f) => -ventedExcursionRatio(box, f), box.h, 10 * Math.max(box.h, 1), 1e-9);
  return { ratio: -found.value, frequencyOverFs: found.x };
};

/**
 * Displacement-limited acoustic power above the tuning, kP in PA = kP f3⁴ VD², W·s⁴/m⁶, half space: (4π³ρ/c)/((f3/fs)⁴ X²).
 *
 * For B4 this gives 7.2. Small prints 3.0 for programme, which holds an allowance that this does not reproduce (guidance only).
 */
export const ventedPowerConstant = (box: VentedBox, air: AirProperties): number => {
  const f3OverFs = ventedHalfPower(ventedCoefficients(box)) * Math.sqrt(box.h);
  const { ratio } = ventedExcursionPeak(box);
  return (4 * Math.PI ** 3 * air.densityKgPerM3) / (air.soundSpeedMPerS * f3OverFs ** 4 * ratio ** 2);
};
