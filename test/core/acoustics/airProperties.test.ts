import { describe, expect, it } from 'vitest';
import {
  AIR_LIMITS,
  airProperties,
  cramerSoundSpeed,
  idealDryAir,
  moistAirDensity,
} from '../../../src/core/acoustics/index.ts';
import { word } from '../../../src/core/messages/index.ts';

const at = (temperatureC: number, humidityFraction: number, pressurePa = 101325) => {
  const air = airProperties({ temperatureC, pressurePa, humidityFraction });
  if (!air.ok) throw new Error(JSON.stringify(air.problems));
  return air.value;
};

describe('airProperties', () => {
  it('gives 331.45 m/s in standard dry air at 0 °C (O. Cramer 1993, abstract: 331.45 ± 0.05 m/s with 0.0314 % CO2)', () => {
    expect(Math.abs(cramerSoundSpeed(0, 101325, 0, 0.000314) - 331.45)).toBeLessThan(0.005);
  });

  it('gives the saturation pressure of water at 20 °C (2339 Pa, steam tables, from memory) through the mole fraction', () => {
    expect(Math.abs((at(20, 1).waterMoleFraction * 101325) / 2339 - 1)).toBeLessThan(0.006);
  });

  it('agrees with the ideal gas, an independent formula, to 0.1 % in dry air over the whole range', () => {
    for (const temperatureC of [0, 10, 20, 30, 40]) {
      for (const pressurePa of [60_000, 90_000, 110_000]) {
        const ideal = idealDryAir(temperatureC, pressurePa);
        const real = at(temperatureC, 0, pressurePa);
        expect(Math.abs(real.densityKgPerM3 / ideal.densityKgPerM3 - 1)).toBeLessThan(1e-3);
        expect(Math.abs(real.soundSpeedMPerS / ideal.soundSpeedMPerS - 1)).toBeLessThan(1e-3);
      }
    }
  });

  it('agrees with a mixture of two ideal gases to 0.1 % in moist air', () => {
    for (const temperatureC of [10, 20, 30]) {
      const moist = at(temperatureC, 0.6);
      const x = moist.waterMoleFraction;
      const density =
        (idealDryAir(temperatureC, 101325).densityKgPerM3 * (28.9652 - (28.9652 - 18.0153) * x)) / 28.9652;
      expect(Math.abs(moist.densityKgPerM3 / density - 1)).toBeLessThan(1e-3);
    }
  });

  it('makes moist air lighter and faster, warm air thinner and faster, and thick air no faster', () => {
    expect(at(20, 0.9).densityKgPerM3).toBeLessThan(at(20, 0.1).densityKgPerM3);
    expect(at(20, 0.9).soundSpeedMPerS).toBeGreaterThan(at(20, 0.1).soundSpeedMPerS);
    expect(at(30, 0.5).densityKgPerM3).toBeLessThan(at(10, 0.5).densityKgPerM3);
    expect(at(30, 0.5).soundSpeedMPerS).toBeGreaterThan(at(10, 0.5).soundSpeedMPerS);
    const [low, high] = [moistAirDensity(20, 80_000, 0, 4e-4), moistAirDensity(20, 100_000, 0, 4e-4)];
    expect(high.densityKgPerM3 / low.densityKgPerM3).toBeCloseTo(1.25, 3);
    expect(Math.abs(at(20, 0, 80_000).soundSpeedMPerS / at(20, 0).soundSpeedMPerS - 1)).toBeLessThan(1e-4);
  });

  it('refuses each condition outside its range, with place, value and range in one sentence', () => {
    const air = airProperties({ temperatureC: -20, pressurePa: 50_000, humidityFraction: Number.NaN });
    expect(air.ok).toBe(false);
    if (air.ok) return;
    expect(air.problems.map(({ place }) => place.field)).toEqual(['temperatureC', 'pressurePa', 'humidityFraction']);
    const { sentence, remedy } = word(air.problems[0]!);
    expect(sentence).toBe('An air temperature of −20 °C is outside what the formulas for air cover.');
    expect(remedy).toBe('Enter 0 °C to 40 °C.');
    for (const found of air.problems) expect(JSON.stringify(found)).not.toContain('null');
    expect(AIR_LIMITS.temperatureC).toEqual([0, 40]);
  });
});
