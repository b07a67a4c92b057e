import type { AirProperties } from '../../acoustics/airProperties.ts';
import { sealedResponse } from './sealedResponse.ts';

/**
 * Displacement-limited acoustic power of a sealed box, kP in PA = kP f3⁴ VD², W·s⁴/m⁶: half space, sine anywhere in the band.
 *
 * kP = (4π³ρ/c)/((f3/fc)⁴ |X|²), |X| = Qtc²/√(Qtc² − ¼) the greatest excursion re that at zero frequency (1 up to Qtc = 0.7071);
 * VD peak volume displacement, m³.
 * Source: R. H. Small, "Closed-Box Loudspeaker Systems", J. Audio Eng. Soc. 20 and 21, 1972/73 (PAR = 0.85 f3⁴ VD²).
 *
 * Example: Qtc 1.1 in air of 1.18 kg/m³ and 345 m/s: 0.848
 */
export const sealedPowerConstant = (qtc: number, air: AirProperties): number => {
  const { f3OverFc, peakRatio } = sealedResponse(qtc);
  return (4 * Math.PI ** 3 * air.densityKgPerM3) / (air.soundSpeedMPerS * f3OverFc ** 4 * peakRatio ** 2);
};
