import { describe, expect, it } from 'vitest';
import {
  adiabaticModulusPa,
  gasSoundSpeedMPerS,
  TEXTBOOK_AIR,
  viscousAir,
  viscousDepthM,
} from '../../../src/core/acoustics/index.ts';

describe('viscousAir', () => {
  it('has the viscosity of the tables: 17.2, 18.2 and 19.1 μPa·s at 0, 20 and 40 °C (handbook, from memory, 0.5 %)', () => {
    for (const [celsius, tabled] of [
      [0, 1.72e-5],
      [20, 1.82e-5],
      [40, 1.91e-5],
    ] as const) {
      expect(Math.abs(viscousAir(TEXTBOOK_AIR, celsius).viscosityPaS / tabled - 1)).toBeLessThan(6e-3);
    }
  });

  it('keeps density and speed, whose modulus is that of 101.2 kPa', () => {
    const air = viscousAir(TEXTBOOK_AIR, 20);
    expect(air).toMatchObject(TEXTBOOK_AIR);
    expect(adiabaticModulusPa(air) / air.heatCapacityRatio).toBeCloseTo(101_232, 0);
    const back = gasSoundSpeedMPerS(adiabaticModulusPa(air) / air.heatCapacityRatio, air.heatCapacityRatio, 1.2041);
    expect(back).toBeCloseTo(343.2, 10);
  });

  it('has the layer of its formula with ν 15 mm²/s: 0.49, 0.35 and 0.22 mm at 20, 40 and 100 Hz', () => {
    const mm = [20, 40, 100].map((f) => viscousDepthM(viscousAir(TEXTBOOK_AIR, 20), 2 * Math.PI * f) * 1e3);
    expect(mm.map((depth) => Number(depth.toFixed(2)))).toEqual([0.49, 0.35, 0.22]);
  });
});
