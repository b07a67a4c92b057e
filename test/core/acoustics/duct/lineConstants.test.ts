import { describe, expect, it } from 'vitest';
import {
  adiabaticModulusPa,
  bundledLineConstants,
  type DuctSection,
  ductAreaM2,
  ductPerimeterM,
  ductRadiusM,
  lineConstants,
  phaseSpeedMPerS,
  propagation,
  roundDuct,
  squareDuct,
  wideTubePropagation,
} from '../../../../src/core/acoustics/index.ts';
import { add, type Complex, complex, divide, scale } from '../../../../src/core/math/index.ts';
import { apart, omegaOf, STILL_AIR } from './integrate.ts';

const AIR = STILL_AIR;
const nu = AIR.viscosityPaS / AIR.densityKgPerM3;

/** 1 − F of a rectangle by its double sine series (M. R. Stinson 1991, rectangular section), summed far out. */
const rectangleFree = (widthM: number, heightM: number, omega: number): Complex => {
  let sum = complex(0);
  const terms = 1200;
  for (let m = 0; m < terms; m++) {
    for (let n = 0; n < terms; n++) {
      const [a, b] = [((2 * m + 1) * Math.PI) / widthM, ((2 * n + 1) * Math.PI) / heightM];
      const weight = 64 / (a * b * widthM * heightM) ** 2;
      sum = add(sum, scale(divide(complex(0, omega / nu), complex(a * a + b * b, omega / nu)), weight));
    }
  }
  return sum;
};

describe('lineConstants', () => {
  it('go over into Poiseuille’s law and the isothermal compliance in a narrow tube and slit (textbook)', () => {
    const omega = omegaOf(20);
    const round = lineConstants(roundDuct(50e-6), AIR, omega);
    const areaM2 = Math.PI * 50e-6 ** 2;
    expect(apart(complex(round.series.re), complex((8 * AIR.viscosityPaS) / (Math.PI * 50e-6 ** 4)))).toBeLessThan(
      1e-4,
    );
    expect(round.series.im / ((omega * AIR.densityKgPerM3) / areaM2)).toBeCloseTo(4 / 3, 3);
    const isothermal = (omega * areaM2 * AIR.heatCapacityRatio) / adiabaticModulusPa(AIR);
    expect(round.shunt.im / isothermal).toBeCloseTo(1, 4);
    const slit = lineConstants({ kind: 'slit', gapM: 1e-4, widthM: 0.1 }, AIR, omega);
    expect(slit.series.re / ((12 * AIR.viscosityPaS) / (1e-12 * 0.1))).toBeCloseTo(1, 3);
    expect(slit.series.im / ((omega * AIR.densityKgPerM3) / 1e-5)).toBeCloseTo(6 / 5, 3);
  });

  it('go over into Kirchhoff’s wide tube: 0.25 % above it at a = 20 mm, 1 kHz, the difference falling as 1/a', () => {
    const excess = (radiusM: number): number => {
      const exact = propagation(lineConstants(roundDuct(radiusM), AIR, omegaOf(1000))).gammaPerM;
      const wide = wideTubePropagation(radiusM, AIR, omegaOf(1000));
      expect(Math.abs(exact.im / wide.phaseRadPerM - 1)).toBeLessThan(1e-5);
      return exact.re / wide.attenuationNpPerM - 1;
    };
    expect(excess(0.02)).toBeCloseTo(0.0025, 4);
    expect(excess(0.02) / excess(0.04)).toBeCloseTo(2, 1);
  });

  it('take a slot by area and perimeter: exact rectangle within 0.1 % in the mass and 1 % in the loss', () => {
    for (const [widthM, heightM] of [
      [0.2, 0.02],
      [0.15, 0.03],
      [0.05, 0.05],
    ] as const) {
      const omega = omegaOf(35);
      const { series } = lineConstants({ kind: 'slot', widthM, heightM }, AIR, omega);
      const unit = (omega * AIR.densityKgPerM3) / (widthM * heightM);
      const exact = divide(complex(0, unit), rectangleFree(widthM, heightM, omega));
      // The series itself is cut: its rest is below 0.05 % of the loss.
      expect(Math.abs(series.im / exact.im - 1)).toBeLessThan(1e-3);
      expect(Math.abs(series.re / exact.re - 1)).toBeLessThan(0.015);
    }
  });

  it('give a port of the walls’ loss alone a Q of about a/d: 54, 95 and 135 for 20, 35 and 50 mm at 35 Hz (1 %)', () => {
    for (const [radiusM, q] of [
      [0.02, 54],
      [0.035, 95],
      [0.05, 135],
    ] as const) {
      const { series } = lineConstants(roundDuct(radiusM), AIR, omegaOf(35));
      expect(Math.abs(series.im / series.re / q - 1)).toBeLessThan(0.01);
    }
  });

  it('an empty line runs at 343 m/s less 0.5 %', () => {
    const { gammaPerM } = propagation(lineConstants(squareDuct(0.012), AIR, omegaOf(60)));
    expect(phaseSpeedMPerS(gammaPerM, omegaOf(60))).toBeGreaterThan(340);
    expect(phaseSpeedMPerS(gammaPerM, omegaOf(60))).toBeLessThan(343.2);
  });

  it('bundles side by side and adds a resistance in series with them all', () => {
    const one = lineConstants(roundDuct(0.03), AIR, 300);
    const three = bundledLineConstants(one, 3, 50);
    expect(three.series).toEqual({ re: one.series.re / 3 + 50, im: one.series.im / 3 });
    expect(three.shunt).toEqual({ re: 3 * one.shunt.re, im: 3 * one.shunt.im });
  });
});

describe('sections', () => {
  it('know area, perimeter and radius of equal area', () => {
    const all: DuctSection[] = [
      { kind: 'round', diameterM: 0.1 },
      { kind: 'slot', widthM: 0.2, heightM: 0.03 },
      { kind: 'slit', gapM: 0.01, widthM: 0.2 },
      { kind: 'any', areaM2: 0.01, perimeterM: 0.5 },
    ];
    const rounded = (x: number): number => Number(x.toPrecision(6));
    expect(all.map((section) => rounded(ductAreaM2(section)))).toEqual([0.00785398, 0.006, 0.002, 0.01]);
    expect(all.map((section) => rounded(ductPerimeterM(section)))).toEqual([0.314159, 0.46, 0.4, 0.5]);
    expect(ductRadiusM(all[0]!)).toBeCloseTo(0.05, 12);
    expect(ductPerimeterM(squareDuct(0.04))).toBeCloseTo(0.8, 12);
  });
});
