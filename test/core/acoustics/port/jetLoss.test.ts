import { describe, expect, it } from 'vitest';
import {
  blendedLossFactor,
  JET_THIRD_HARMONIC,
  jetCompression,
  jetResistancePaSPerM,
  jetResistancePaSPerM3,
} from '../../../../src/core/acoustics/index.ts';
import { add, complex, divide, magnitude, reciprocal } from '../../../../src/core/math/index.ts';
import { AIR } from '../sweep.ts';

const rho = AIR.densityKgPerM3;

describe('jetResistancePaSPerM', () => {
  it('gives 6.132 Pa·s/m and 1593 Pa·s/m³ for K 1.2, 10 m/s and 70 mm (physics notes, PORT-05)', () => {
    expect(jetResistancePaSPerM(1.2, 10, rho)).toBeCloseTo(6.13243, 5);
    expect(jetResistancePaSPerM3(1.2, 10, Math.PI * 0.035 ** 2, rho)).toBeCloseTo(1593.48, 2);
  });

  it('is the first harmonic of (Kρ/2) v|v|, whose third is a fifth', () => {
    const points = 4096;
    const harmonic = (n: number): number => {
      let sum = 0;
      for (let i = 0; i < points; i++) {
        const angle = (2 * Math.PI * i) / points;
        const v = 10 * Math.sin(angle);
        sum += (2 / points) * ((1.2 * rho) / 2) * v * Math.abs(v) * Math.sin(n * angle);
      }
      return sum;
    };
    expect(harmonic(1) / 10).toBeCloseTo(jetResistancePaSPerM(1.2, 10, rho), 8);
    expect(Math.abs(harmonic(3) / harmonic(1))).toBeCloseTo(JET_THIRD_HARMONIC, 8);
  });
});

describe('blendedLossFactor', () => {
  it('is off up to a stroke of the edge, whole from twice that, whole at a sharp edge', () => {
    expect([0.005, 0.01, 0.015, 0.02, 0.1].map((stroke) => blendedLossFactor(1.2, stroke, 0.01))).toEqual([
      0,
      0,
      0.6 * (0.015 / 0.01 - 1) * 2,
      1.2,
      1.2,
    ]);
    expect(blendedLossFactor(1.2, 1e-6, 0)).toBe(1.2);
  });
});

describe('jetCompression', () => {
  const port = { tuningHz: 39.1, areaM2: Math.PI * 0.035 ** 2, effectiveLengthM: 0.25, lossFactor: 1.2, ql: 10 };

  it('solves the same as chamber, leak and port with that resistance, step by step', () => {
    const omega = 2 * Math.PI * port.tuningHz;
    const mass = (rho * port.effectiveLengthM) / port.areaM2;
    const compliance = 1 / (omega ** 2 * mass);
    const leak = complex(1 / (port.ql * omega * mass));
    const flowPerCone = (resistance: number): number => {
      const bore = complex(resistance, omega * mass);
      const pressure = reciprocal(add(add(complex(0, omega * compliance), leak), reciprocal(bore)));
      return magnitude(divide(pressure, bore));
    };
    const losslessPeakMPerS = 10;
    let speed = losslessPeakMPerS;
    for (let i = 0; i < 200; i++) {
      const next =
        (losslessPeakMPerS * flowPerCone(jetResistancePaSPerM3(1.2, speed, port.areaM2, rho))) / flowPerCone(0);
      speed = (speed + next) / 2;
    }
    const found = jetCompression({ ...port, losslessPeakMPerS }, AIR);
    expect(found.speedPeakMPerS).toBeCloseTo(speed, 9);
    expect(found.lossDb).toBeCloseTo(20 * Math.log10(10 / speed), 9);
    expect(flowPerCone(0)).toBeCloseTo(10, 9);
  });

  it('is about 4 dB at 6.5 m/s with QL 10 (physics notes, 4.8, bore not stated there), grows with speed and fades below', () => {
    const at = (losslessPeakMPerS: number) => jetCompression({ ...port, losslessPeakMPerS }, AIR);
    const near = at(10.2);
    expect(Math.abs(near.speedPeakMPerS - 6.5)).toBeLessThan(0.15);
    expect(Math.abs(near.lossDb - 4)).toBeLessThan(0.4);
    expect(at(20).lossDb).toBeGreaterThan(near.lossDb);
    expect(at(0.01).lossDb).toBeLessThan(0.01);
    expect(at(0)).toEqual({ speedPeakMPerS: 0, lossDb: 0, resistancePaSPerM3: 0 });
  });
});
