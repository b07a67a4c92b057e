import {
  airProperties,
  CRAMER_COEFFICIENTS,
  idealDryAir,
  rootSoundSpeed,
  roughSoundSpeed,
} from '../../../src/core/acoustics/index.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, asNumbers } from '../convert.ts';

const coefficients: Adapter = {
  family: 'air-cramer-coeffs',
  requires: [],
  run: () => ({ a0_to_a15: [...CRAMER_COEFFICIENTS] }),
};

const air: Adapter = {
  family: 'air',
  requires: ['t_C', 'p_Pa', 'RH', 'xCO2'],
  run: ({ t_C, p_Pa, RH, xCO2 }) => {
    const conditions = { temperatureC: asNumber(t_C), pressurePa: asNumber(p_Pa), humidityFraction: asNumber(RH) };
    const moist = airProperties({ ...conditions, co2Fraction: asNumber(xCO2) });
    if (!moist.ok) return null;
    const dry = idealDryAir(conditions.temperatureC, conditions.pressurePa);
    return {
      c_cramer: moist.value.soundSpeedMPerS,
      rho_cipm2007: moist.value.densityKgPerM3,
      c_ideal_dry: dry.soundSpeedMPerS,
      rho_ideal_dry: dry.densityKgPerM3,
      xw: moist.value.waterMoleFraction,
    };
  },
};

const rules: Adapter = {
  family: 'air-approx',
  requires: ['t_C'],
  run: ({ t_C }) => ({ c: asNumbers(t_C).map(roughSoundSpeed), c_sqrt: asNumbers(t_C).map(rootSoundSpeed) }),
};

export const adapters: readonly Adapter[] = [coefficients, air, rules];
