import { complex } from '../../math/complex.ts';
import type { AirProperties } from '../airProperties.ts';
import { type EquivalentFluid, fluidOfWave } from './equivalentFluid.ts';

/** Where both fits hold, by frequency (times ρ for the older one) over flow resistivity. */
export const EMPIRICAL_RANGE = { least: 0.01, most: 1 } as const;

/**
 * Delany and Bazley's fit for fibres, X = ρf/σ: Zc = ρc(1 + 0.0571 X^−0.754 − j 0.087 X^−0.732),
 * k = (ω/c)(1 + 0.0978 X^−0.700 − j 0.189 X^−0.595); σ in Pa·s/m².
 *
 * Porosity near 1, `EMPIRICAL_RANGE` in X; below it a layer may come out with negative resistance, so it does for a loosely filled
 * bass chamber. Knows nothing of the isothermal limit: no volume gain is to be taken from it.
 * Source: M. E. Delany, E. N. Bazley, Applied Acoustics 3, 1970, 105 (from memory).
 */
export const delanyBazleyFluid =
  (resistivityPaSPerM2: number, air: AirProperties): EquivalentFluid =>
  (omega) => {
    const { densityKgPerM3: rho, soundSpeedMPerS: c } = air;
    const x = (rho * omega) / (2 * Math.PI * resistivityPaSPerM2);
    const impedance = rho * c;
    const k = omega / c;
    return fluidOfWave(
      {
        impedancePaSPerM: complex(impedance * (1 + 0.0571 * x ** -0.754), -impedance * 0.087 * x ** -0.732),
        wavenumberPerM: complex(k * (1 + 0.0978 * x ** -0.7), -k * 0.189 * x ** -0.595),
      },
      omega,
    );
  };

/**
 * Miki's fit, X = f/σ: Zc = ρc(1 + 0.0699 X^−0.632 − j 0.107 X^−0.632), k = (ω/c)(1 + 0.109 X^−0.618 − j 0.160 X^−0.618).
 *
 * As `delanyBazleyFluid`, but causal and never of negative resistance; the isothermal limit is missing in it too.
 * Source: Y. Miki, J. Acoust. Soc. Jpn. (E) 11, 1990, 19.
 */
export const mikiFluid =
  (resistivityPaSPerM2: number, air: AirProperties): EquivalentFluid =>
  (omega) => {
    const { densityKgPerM3: rho, soundSpeedMPerS: c } = air;
    const x = omega / (2 * Math.PI * resistivityPaSPerM2);
    const impedance = rho * c;
    const k = omega / c;
    return fluidOfWave(
      {
        impedancePaSPerM: complex(impedance * (1 + 0.0699 * x ** -0.632), -impedance * 0.107 * x ** -0.632),
        wavenumberPerM: complex(k * (1 + 0.109 * x ** -0.618), -k * 0.16 * x ** -0.618),
      },
      omega,
    );
  };
