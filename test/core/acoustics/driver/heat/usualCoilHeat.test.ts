import { describe, expect, it } from 'vitest';
import {
  type CoilSize,
  coilHeatCapacityJPerK,
  coilSizeOf,
  HEAT_LIMITS_C,
  USUAL_COIL_HEAT,
  usualCoilHeat,
} from '../../../../../src/core/acoustics/index.ts';

const SIZES = Object.keys(USUAL_COIL_HEAT) as CoilSize[];

describe('usual heat of coils', () => {
  it('hangs together: time constants are resistance times capacity within the spread', () => {
    for (const size of SIZES) {
      const usual = USUAL_COIL_HEAT[size];
      for (const [r, c, tau] of [
        [usual.coilKPerW, usual.coilJPerK, usual.coilS],
        [usual.magnetKPerW, usual.magnetJPerK, usual.magnetS],
      ] as const) {
        const product = Math.sqrt(r[0] * r[1] * c[0] * c[1]);
        // Geometric middles against each other: the table's spread is a factor 2.
        expect(product).toBeGreaterThan(Math.sqrt(tau[0] * tau[1]) / 2);
        expect(product).toBeLessThan(Math.sqrt(tau[0] * tau[1]) * 2);
      }
    }
  });
  it('holds as much heat as its copper, within the spread and what the former adds', () => {
    for (const size of SIZES) {
      const { coilKg, coilJPerK } = USUAL_COIL_HEAT[size];
      const copper = coilHeatCapacityJPerK(Math.sqrt(coilKg[0] * coilKg[1]), 'copper');
      const ratio = Math.sqrt(coilJPerK[0] * coilJPerK[1]) / copper;
      expect(ratio).toBeGreaterThan(0.5);
      // The lightest coils: the former and the insulation weigh more than the wire.
      expect(ratio).toBeLessThan(2.2);
    }
  });
  it('sheds heat the better the larger the coil is', () => {
    const resistances = SIZES.map((size) => usualCoilHeat(size).path[0]!.resistanceKPerW);
    expect(resistances).toEqual([...resistances].sort((a, b) => b - a));
  });
  it('chooses the size by diameter, and a dome by its shape', () => {
    expect([0.026, 0.033, 0.05, 0.066, 0.1].map((d) => coilSizeOf(d, 'cone'))).toEqual([
      'small',
      'small',
      'medium',
      'medium',
      'large',
    ]);
    expect(coilSizeOf(0.033, 'dome')).toBe('dome');
  });
  it('ferrofluid halves way and time to the magnet, and nothing else', () => {
    const [dry, wet] = [usualCoilHeat('dome'), usualCoilHeat('dome', true)];
    expect(wet.path[0]!.resistanceKPerW / dry.path[0]!.resistanceKPerW).toBeCloseTo(0.5, 12);
    expect(wet.path[0]!.timeConstantS / dry.path[0]!.timeConstantS).toBeCloseTo(0.5, 12);
    expect(wet.path[1]).toEqual(dry.path[1]);
  });
  it('holds to the careful end of the former’s range', () => {
    expect(usualCoilHeat('medium').limitC).toBe(HEAT_LIMITS_C.polyimide[0]);
    for (const [low, high] of Object.values(HEAT_LIMITS_C)) expect(low).toBeLessThan(high);
  });
});
