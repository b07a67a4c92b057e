import { describe, expect, it } from 'vitest';
import { capacitor } from '../../../../src/core/circuit/branches/capacitor.ts';
import {
  CAPACITOR_KINDS,
  capacitorSeriesOhm,
  deratedPowerW,
  dielectricOhm,
  RESISTOR_KINDS,
  resistorTemperatureC,
} from '../../../../src/core/circuit/kinds/index.ts';

describe('capacitor losses', () => {
  it('are those of the film data page: 10 µF polyester 80 mΩ at 1 kHz, 17.5 mΩ at 10 kHz', () => {
    expect(capacitorSeriesOhm(CAPACITOR_KINDS.polyester, 10e-6, 1000, 0).usualOhm).toBeCloseTo(0.0795775, 6);
    expect(capacitorSeriesOhm(CAPACITOR_KINDS.polyester, 10e-6, 10000, 0).usualOhm).toBeCloseTo(0.017507, 6);
  });
  it('make a branch whose real over imaginary impedance is the tangent', () => {
    const ohm = dielectricOhm(4.7e-6, 2500, 0.011);
    const [re, im] = [new Float64Array(1), new Float64Array(1)];
    capacitor('C1', ['a', '0'], { farad: 4.7e-6, esrOhm: ohm }).admittance(Float64Array.of(2 * Math.PI * 2500), re, im);
    expect(re[0]! / im[0]!).toBeCloseTo(0.011, 10);
  });
  it('keep their order at every frequency and are held beyond the points, leads added', () => {
    for (const kind of Object.values(CAPACITOR_KINDS)) {
      for (const hz of [50, 1000, 3162, 40000, 500000]) {
        const { leastOhm, usualOhm, mostOhm } = capacitorSeriesOhm(kind, 1e-6, hz, 0.01);
        expect(leastOhm).toBeGreaterThan(0.01);
        expect(usualOhm).toBeGreaterThanOrEqual(leastOhm);
        expect(mostOhm).toBeGreaterThanOrEqual(usualOhm);
      }
      const [low, lower] = [100, 10].map((hz) => capacitorSeriesOhm(kind, 1e-6, hz, 0).usualOhm);
      expect(lower! / low!).toBeCloseTo(10, 9);
    }
    // Halfway between 1 and 10 kHz on a logarithmic axis: the mean of the two tangents.
    const middle = capacitorSeriesOhm(CAPACITOR_KINDS.polyester, 1e-6, Math.sqrt(1e7), 0).usualOhm;
    expect(middle).toBeCloseTo(dielectricOhm(1e-6, Math.sqrt(1e7), 0.008), 9);
  });
});

describe('resistor ratings', () => {
  const film = { flatToC: 70, zeroAtC: 155 };
  it('are whole to the knee, half half-way, nothing at the end', () => {
    expect([20, 70, 112.5, 155, 200].map((airC) => deratedPowerW(2, film, airC))).toEqual([2, 2, 1, 0, 0]);
  });
  it('agree with the temperature: at the derated power the hottest place is at its limit', () => {
    for (const kind of Object.values(RESISTOR_KINDS)) {
      for (const airC of [kind.flatToC, 80, 120]) {
        expect(resistorTemperatureC(deratedPowerW(10, kind, airC), 10, kind, airC)).toBeCloseTo(kind.zeroAtC, 9);
      }
    }
  });
  it('let a 10 W wire-wound one take 8.2 W in 70 °C of air', () => {
    expect(deratedPowerW(10, RESISTOR_KINDS['wire-wound'], 70)).toBeCloseTo(8.2, 9);
  });
});
