import { describe, expect, it } from 'vitest';
import {
  ALUMINIUM,
  COPPER,
  cableOhm,
  diameterGauge,
  gaugeDiameterM,
  resistivityAtOhmM,
  seriesLossDb,
  WINDING_WIRES,
  wireFigures,
} from '../../../../src/core/circuit/wire/index.ts';

describe('wire', () => {
  it('agrees with the printed table of ASTM B258 within its rounding, 0.2 % in diameter and 0.3 % in resistance', () => {
    // Gauge, mm, ohm/km as tables of wire data print them.
    for (const [gauge, mm, ohmPerKm] of [
      [12, 2.0523, 5.21],
      [14, 1.6281, 8.28],
      [16, 1.2903, 13.17],
      [18, 1.0236, 20.94],
      [20, 0.8128, 33.29],
    ] as const) {
      const diameterM = gaugeDiameterM(gauge);
      expect(Math.abs((diameterM * 1000) / mm - 1)).toBeLessThan(0.002);
      expect(Math.abs((wireFigures(diameterM, COPPER, 20).ohmPerM * 1000) / ohmPerKm - 1)).toBeLessThan(0.003);
    }
  });
  it('has its two defining gauges, 36 and 0000, and goes back from diameter to gauge', () => {
    expect(gaugeDiameterM(36)).toBeCloseTo(0.005 * 0.0254, 12);
    expect(gaugeDiameterM(-3) / (0.46 * 0.0254)).toBeCloseTo(1, 12);
    for (const gauge of [-3, 0, 13.5, 24, 40]) expect(diameterGauge(gaugeDiameterM(gauge))).toBeCloseTo(gauge, 10);
  });
  it('loses resistance as area grows, and mass and resistance per metre multiply to density times resistivity', () => {
    for (const { bareM } of WINDING_WIRES) {
      const figures = wireFigures(bareM, COPPER, 20);
      expect((figures.kgPerM * figures.ohmPerM) / (8890 * 1.7241379e-8)).toBeCloseTo(1, 7);
      expect(figures.areaM2 / bareM ** 2).toBeCloseTo(0.785398163, 8);
    }
    // 1 mm² of copper: 17.24 mΩ and 8.89 g a metre, by definition of the standard.
    const square = wireFigures(Math.sqrt(4e-6 / Math.PI), COPPER, 20);
    expect(square.ohmPerM).toBeCloseTo(1 / 58, 9);
    expect(square.kgPerM).toBeCloseTo(8.89e-3, 9);
  });
  it('has 0.393 % more resistance for each kelvin of copper, and 64 % more in aluminium of the same size', () => {
    expect(resistivityAtOhmM(COPPER, 30) / resistivityAtOhmM(COPPER, 20)).toBeCloseTo(1.0393, 10);
    expect(resistivityAtOhmM(ALUMINIUM, 20) / resistivityAtOhmM(COPPER, 20)).toBeCloseTo(1.639, 3);
  });
  it('has enamelled wires in rising order, the enamel 4 to 15 % of the bare diameter', () => {
    WINDING_WIRES.forEach(({ bareM, overEnamelM }, n) => {
      if (n > 0) expect(bareM).toBeGreaterThan(WINDING_WIRES[n - 1]!.bareM);
      expect(overEnamelM / bareM).toBeGreaterThan(1.04);
      expect(overEnamelM / bareM).toBeLessThan(1.15);
    });
  });
});

describe('cable', () => {
  const cable = { lengthM: 5, areaM2: 2.5e-6, conductor: COPPER, temperatureC: 20 };
  it('counts both cores: 5 m of 2.5 mm² have 10 m of 6.9 mΩ/m', () => {
    expect(cableOhm(cable)).toBeCloseTo(10 / 58 / 2.5, 9);
    expect(cableOhm({ ...cable, areaM2: 5e-6 })).toBeCloseTo(cableOhm(cable) / 2, 12);
  });
  it('takes 0.21 dB off 4 Ω at 0.1 Ω, less off more, and nothing without resistance', () => {
    const load = { re: Float64Array.of(4, 8, 0), im: Float64Array.of(0, 0, 4) };
    const loss = seriesLossDb(load, 0.1);
    expect(loss[0]).toBeCloseTo(20 * Math.log10(4 / 4.1), 10);
    expect(loss[1]).toBeGreaterThan(loss[0]!);
    // A reactance hardly feels it: |Z/(Z + R)| = 1/√(1 + (R/X)²).
    expect(loss[2]).toBeCloseTo(-10 * Math.log10(1 + (0.1 / 4) ** 2), 10);
    expect([...seriesLossDb(load, 0)]).toEqual([0, 0, 0]);
  });
});
