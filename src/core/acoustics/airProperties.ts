import { fail, type Problem, problem, type Result, succeed } from '../messages/problem.ts';
import { cramerSoundSpeed } from './cramerSoundSpeed.ts';
import { moistAirDensity } from './moistAirDensity.ts';

/** What sound needs to know of the air. */
export interface AirProperties {
  readonly densityKgPerM3: number;
  readonly soundSpeedMPerS: number;
}

export interface AirConditions {
  readonly temperatureC: number;
  readonly pressurePa: number;
  /** Relative humidity, 0 to 1. */
  readonly humidityFraction: number;
  /** Mole fraction of carbon dioxide; the reference air of CIPM-2007, 0.0004, when left out. */
  readonly co2Fraction?: number;
}

/** Where the two formulas are used. A little wider than their authors' ranges, where they stay smooth. */
export const AIR_LIMITS = {
  temperatureC: [0, 40],
  pressurePa: [60_000, 110_000],
  humidityFraction: [0, 1],
  co2Fraction: [0, 0.01],
} as const;

/**
 * Density and speed of sound of moist air, with the mole fraction of water that both use.
 *
 * Density by CIPM-2007, speed after Cramer 1993 (see `moistAirDensity` and `cramerSoundSpeed` for their ranges and errors).
 * Conditions outside `AIR_LIMITS` come back as Problems `acoustics.air-out-of-range`, one for each.
 *
 * Example: airProperties({ temperatureC: 20, pressurePa: 101325, humidityFraction: 0.5 }) gives 1.1993 kg/m³ and 343.99 m/s.
 */
export const airProperties = (
  conditions: AirConditions,
): Result<AirProperties & { readonly waterMoleFraction: number }> => {
  const { temperatureC, pressurePa, humidityFraction, co2Fraction = 0.0004 } = conditions;
  const given = { temperatureC, pressurePa, humidityFraction, co2Fraction };
  const problems: Problem[] = [];
  for (const [field, [least, most]] of Object.entries(AIR_LIMITS)) {
    const value = given[field as keyof typeof given];
    if (value >= least && value <= most) continue;
    problems.push(
      problem(
        'acoustics.air-out-of-range',
        { kind: 'field', field },
        { value: Number.isFinite(value) ? value : '', least, most },
      ),
    );
  }
  if (problems.length > 0) return fail(...problems);
  const { densityKgPerM3, waterMoleFraction } = moistAirDensity(
    temperatureC,
    pressurePa,
    humidityFraction,
    co2Fraction,
  );
  const soundSpeedMPerS = cramerSoundSpeed(temperatureC, pressurePa, waterMoleFraction, co2Fraction);
  return succeed({ densityKgPerM3, soundSpeedMPerS, waterMoleFraction });
};
