import type { Complex } from '../math/complex.ts';
import type { Admittance } from './admittance.ts';
import type { DriverParameters } from './driver/driverParameters.ts';

type Coil = Pick<DriverParameters, 'reOhm' | 'leH' | 'semiInductance'>;

/**
 * Semi-inductance K (jω)^n at one angular frequency, ohm: constant phase 90 n degrees; n from 0 (resistor) to 1 (inductor).
 *
 * Source: W. M. Leach, "Loudspeaker Voice-Coil Inductance Losses", J. Audio Eng. Soc. 50, 2002, 442, as quoted.
 */
export const semiInductanceOhm = (kOhmSn: number, exponent: number, omega: number): Complex => {
  const size = kOhmSn * omega ** exponent;
  const angle = (exponent * Math.PI) / 2;
  return { re: size * Math.cos(angle), im: size * Math.sin(angle) };
};

/**
 * A coil that does not move: Y = 1/(Re + jωLe + K (jω)^n), siemens. In series with the driver's gyrator.
 *
 * Small signals; Re at the coil's temperature.
 */
export const voiceCoilAdmittance =
  (coil: Coil): Admittance =>
  (omegas, outRe, outIm) => {
    const semi = coil.semiInductance;
    const cosine = semi ? semi.kOhmSn * Math.cos((semi.exponent * Math.PI) / 2) : 0;
    const sine = semi ? semi.kOhmSn * Math.sin((semi.exponent * Math.PI) / 2) : 0;
    for (let i = 0; i < omegas.length; i++) {
      const w = omegas[i]!;
      const power = semi ? w ** semi.exponent : 0;
      const re = coil.reOhm + cosine * power;
      const im = w * coil.leH + sine * power;
      const square = re * re + im * im;
      outRe[i] = re / square;
      outIm[i] = -im / square;
    }
  };
