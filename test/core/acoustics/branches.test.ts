import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  absorptionResistancePaSPerM3,
  chamberAdmittance,
  chamberComplianceM3PerPa,
  leakAdmittance,
  movingPartsAdmittance,
  passiveRadiatorAdmittance,
  portAdmittance,
  portMassKgPerM4,
  seriesResonator,
  voiceCoilAdmittance,
} from '../../../src/core/acoustics/index.ts';
import { add, complex, divide, magnitude, multiply, reciprocal, subtract } from '../../../src/core/math/index.ts';
import { AIR, admittanceAt } from './sweep.ts';

const positive = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });

describe('seriesResonator', () => {
  it('is 1/(R + jωM + 1/(jωC)) by complex arithmetic and never gives power (seed 51)', () => {
    fc.assert(
      fc.property(
        positive(0, 1e5),
        positive(1e-3, 100),
        positive(1e-9, 1e-3),
        positive(5, 2e4),
        (resistance, mass, compliance, f) => {
          const omega = 2 * Math.PI * f;
          const impedance = add(complex(resistance, omega * mass), reciprocal(complex(0, omega * compliance)));
          fc.pre(magnitude(impedance) > 1e-9);
          const [y] = admittanceAt(seriesResonator({ resistance, mass, compliance }), [f]);
          expect(magnitude(subtract(y!, reciprocal(impedance)))).toBeLessThan(1e-9 * magnitude(y!));
          expect(y!.re).toBeGreaterThanOrEqual(0);
        },
      ),
      { seed: 51 },
    );
  });
});

describe('chamber and port', () => {
  it('have the printed elements of the worked case LOSS-01: 40 L tuned to 38 Hz, QL 7, QA 60, QP 90', () => {
    // Cab = V/(ρc²); resistances by R = Q/(ωC) and 1/(ωCQ); mass by resonance. Values: reference notes, losses.
    const compliance = chamberComplianceM3PerPa(0.04, AIR);
    expect(compliance).toBeCloseTo(2.8203e-7, 10);
    const omega = 2 * Math.PI * 38;
    const [leak] = admittanceAt(leakAdmittance({ volumeM3: 0.04, leak: { q: 7, atHz: 38 } }, AIR), [20]);
    expect(1 / leak!.re).toBeCloseTo(7 / (omega * compliance), 4);
    expect(leak!.im).toBe(0);
    expect(absorptionResistancePaSPerM3({ q: 60, atHz: 38 }, compliance)).toBeCloseTo(1 / (omega * compliance * 60), 6);
    // A port that tunes the chamber to 38 Hz: 165.003 Pa·s/m³ is printed for its loss.
    const mass = 1 / (omega ** 2 * compliance);
    const port = { areaM2: 0.004, effectiveLengthM: (mass * 0.004) / AIR.densityKgPerM3, loss: { q: 90, atHz: 38 } };
    const [flow] = admittanceAt(portAdmittance(port, 0.04, AIR), [38]);
    const impedance = reciprocal(flow!);
    expect(impedance.re).toBeCloseTo(165.003, 2);
    expect(impedance.im).toBeCloseTo(omega * mass, 6);
    expect(impedance.im / impedance.re).toBeCloseTo(90, 6);
  });

  it('resonate together at the Helmholtz frequency, where an impedance bridge gives no imaginary part', () => {
    const port = { areaM2: 0.0038, effectiveLengthM: 0.21, loss: null };
    const fB = (AIR.soundSpeedMPerS / (2 * Math.PI)) * Math.sqrt(port.areaM2 / (port.effectiveLengthM * 0.03));
    const [air] = admittanceAt(chamberAdmittance({ volumeM3: 0.03, absorption: null }, AIR), [fB]);
    const [flow] = admittanceAt(portAdmittance(port, 0.03, AIR), [fB]);
    expect(Math.abs(air!.im + flow!.im) / air!.im).toBeLessThan(1e-12);
    expect(portMassKgPerM4(0.0038, 0.21, AIR)).toBeCloseTo(66.542, 3);
  });

  it('keep their resistances when the tuning moves', () => {
    const loss = { q: 50, atHz: 40 };
    const short = admittanceAt(portAdmittance({ areaM2: 0.004, effectiveLengthM: 0.1, loss }, 0.03, AIR), [25])[0]!;
    const long = admittanceAt(portAdmittance({ areaM2: 0.004, effectiveLengthM: 0.3, loss }, 0.03, AIR), [25])[0]!;
    expect(reciprocal(short).re).toBeCloseTo(reciprocal(long).re, 8);
  });
});

describe('moving parts', () => {
  const parts = { mmsKg: 0.022, cmsMPerN: 9e-4, rmsKgPerS: 1.1, sdM2: 0.0216 };

  it('are Sd²/Rms at resonance, a spring below and a mass above', () => {
    const fs = 1 / (2 * Math.PI * Math.sqrt(0.022 * 9e-4));
    const [below, at, above] = admittanceAt(movingPartsAdmittance(parts), [fs / 1000, fs, fs * 1000]);
    expect(at!.re).toBeCloseTo(0.0216 ** 2 / 1.1, 12);
    expect(Math.abs(at!.im)).toBeLessThan(1e-12);
    expect(below!.im / ((2 * Math.PI * fs * 9e-4 * 0.0216 ** 2) / 1000)).toBeCloseTo(1, 5);
    expect(above!.im * (2 * Math.PI * fs * 1000 * 0.022)).toBeCloseTo(-(0.0216 ** 2), 8);
  });

  it('make the impedance of the electrical equivalent Re + Res || Cmes || Lces through the gyrator (R. H. Small 1972)', () => {
    const [bl, re] = [7.5, 6.2];
    for (const f of [12, 35, 90]) {
      const [y] = admittanceAt(movingPartsAdmittance(parts), [f]);
      const motional = multiply(y!, complex((bl / parts.sdM2) ** 2));
      const omega = 2 * Math.PI * f;
      const parallel = add(
        complex(parts.rmsKgPerS / bl ** 2, omega * (parts.mmsKg / bl ** 2)),
        reciprocal(complex(0, omega * parts.cmsMPerN * bl ** 2)),
      );
      const wanted = add(complex(re), reciprocal(parallel));
      const got = add(complex(re), motional);
      expect(magnitude(subtract(got, wanted))).toBeLessThan(1e-12 * magnitude(wanted));
    }
  });

  it('are a passive radiator without a motor', () => {
    expect(admittanceAt(passiveRadiatorAdmittance(parts), [10, 50])).toEqual(
      admittanceAt(movingPartsAdmittance(parts), [10, 50]),
    );
  });
});

describe('voiceCoilAdmittance', () => {
  it('is 1/(Re + jωLe + K(jω)^n) with the constant phase of 90 n degrees for the last term (Leach 2002)', () => {
    const coil = { reOhm: 5, leH: 1e-4, semiInductance: { kOhmSn: 0.0125, exponent: 0.7 } };
    for (const f of [50, 1000, 12000]) {
      const omega = 2 * Math.PI * f;
      const [y] = admittanceAt(voiceCoilAdmittance(coil), [f]);
      const semi = subtract(reciprocal(y!), complex(5, omega * 1e-4));
      expect(Math.atan2(semi.im, semi.re)).toBeCloseTo((0.7 * Math.PI) / 2, 10);
      expect(magnitude(semi)).toBeCloseTo(0.0125 * omega ** 0.7, 9);
    }
  });

  it('is a plain resistor and inductor without it', () => {
    const [y] = admittanceAt(voiceCoilAdmittance({ reOhm: 5, leH: 1e-3, semiInductance: null }), [500]);
    const wanted = divide(complex(1), complex(5, 2 * Math.PI * 500 * 1e-3));
    expect(magnitude(subtract(y!, wanted))).toBeLessThan(1e-15);
  });
});
