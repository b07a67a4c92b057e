import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chamberAdmittance,
  chamberComplianceM3PerPa,
  passiveRadiatorAdmittance,
} from '../../../../src/core/acoustics/index.ts';
import {
  addedMassForTuningKg,
  loadedRadiator,
  radiatorBoxResponse,
  radiatorBoxTuningHz,
  radiatorNotchForTuningHz,
  ventedResponse,
} from '../../../../src/core/design/alignments/index.ts';
import { add, complex, findRoot, magnitude, multiply, reciprocal } from '../../../../src/core/math/index.ts';
import { word } from '../../../../src/core/messages/index.ts';
import { AIR, admittanceAt } from '../../acoustics/sweep.ts';

const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const radiator = { sdM2: 0.03, mmsKg: 0.05, cmsMPerN: 8e-4, count: 1 };

describe('radiatorBoxResponse', () => {
  it('gives the reference case: −3.531 dB at 30 Hz, a notch at 14 Hz, tuned to 29.7 Hz', () => {
    const box = { fsHz: 30, qt: 0.38, alpha: 1.5, delta: 3.5, notchHz: 14 };
    expect(20 * Math.log10(magnitude(radiatorBoxResponse(box, 30)))).toBeCloseTo(-3.53055485, 6);
    expect(magnitude(radiatorBoxResponse(box, 14))).toBe(0);
    expect(radiatorBoxTuningHz(14, 3.5)).toBeCloseTo(29.6984848, 6);
  });

  it('is the circuit of cone, chamber and radiator (seed 84)', () => {
    fc.assert(
      fc.property(
        number(0.2, 1),
        number(0.3, 4),
        number(0.5, 10),
        number(8, 40),
        number(10, 150),
        (qt, alpha, delta, notchHz, f) => {
          const fsHz = 32;
          const omega = 2 * Math.PI * f;
          const omegaS = 2 * Math.PI * fsHz;
          // Driver's mass 1.
          const boxC = 1 / (omegaS ** 2 * alpha);
          const radiatorC = delta * boxC;
          const radiatorM = 1 / ((2 * Math.PI * notchHz) ** 2 * radiatorC);
          const cone = complex(omegaS / qt, omega - omegaS ** 2 / omega);
          const passive = complex(0, omega * radiatorM - 1 / (omega * radiatorC));
          const chamber = reciprocal(add(complex(0, omega * boxC), reciprocal(passive)));
          const flow = reciprocal(add(cone, chamber));
          // What goes into the air of the chamber is what both together push out.
          const net = multiply(multiply(flow, chamber), complex(0, omega * boxC));
          const level = magnitude(multiply(net, complex(0, omega)));
          expect(magnitude(radiatorBoxResponse({ fsHz, qt, alpha, delta, notchHz }, f))).toBeCloseTo(level, 9);
        },
      ),
      { seed: 84 },
    );
  });

  it('tends to a vented box as the radiator grows soft at a fixed tuning', () => {
    const delta = 1e7;
    const box = { fsHz: 30, qt: 0.4, alpha: 1.2, delta, notchHz: radiatorNotchForTuningHz(33, delta) };
    for (const f of [20, 33, 60]) {
      const vented = magnitude(ventedResponse({ h: 1.1, alpha: 1.2, qt: 0.4, ql: null }, f / 30));
      expect(magnitude(radiatorBoxResponse(box, f)) / vented).toBeCloseTo(1, 5);
    }
  });
});

describe('loadedRadiator', () => {
  it('tunes where the radiator cancels the chamber, and its notch is its own resonance', () => {
    const found = loadedRadiator(radiator, 0.03, 0.04, AIR);
    const parts = { ...radiator, mmsKg: 0.08, rmsKgPerS: 0 };
    const net = (f: number) =>
      admittanceAt(passiveRadiatorAdmittance(parts), [f])[0]!.im +
      admittanceAt(chamberAdmittance({ volumeM3: 0.04, absorption: null }, AIR), [f])[0]!.im;
    expect(found.tuningHz).toBeCloseTo(findRoot(net, found.notchHz * 1.001, 300, 1e-10).x, 7);
    expect(found.notchHz).toBeCloseTo(1 / (2 * Math.PI * Math.sqrt(0.08 * 8e-4)), 10);
    expect(radiatorBoxTuningHz(found.notchHz, found.delta)).toBeCloseTo(found.tuningHz, 9);
    expect(found.delta).toBeCloseTo((8e-4 * 0.03 ** 2) / chamberComplianceM3PerPa(0.04, AIR), 12);
  });

  it('counts two as one of their whole area, mass and stiffness', () => {
    const pair = loadedRadiator({ ...radiator, count: 2 }, 0.02, 0.04, AIR);
    const one = loadedRadiator({ sdM2: 0.06, mmsKg: 0.14, cmsMPerN: 4e-4, count: 1 }, 0, 0.04, AIR);
    expect(pair.tuningHz).toBeCloseTo(one.tuningHz, 10);
    expect(pair.notchHz).toBeCloseTo(one.notchHz, 10);
    expect(pair.delta).toBeCloseTo(one.delta, 12);
  });
});

describe('addedMassForTuningKg', () => {
  it('is the inverse of loadedRadiator for any radiators (seed 85)', () => {
    fc.assert(
      fc.property(
        number(0.01, 0.05),
        fc.integer({ min: 1, max: 3 }),
        number(0, 0.3),
        number(0.01, 0.1),
        (sdM2, count, addedKg, volumeM3) => {
          const own = { ...radiator, sdM2, count };
          const { tuningHz } = loadedRadiator(own, addedKg, volumeM3, AIR);
          const found = addedMassForTuningKg(own, tuningHz * (1 - 1e-12), volumeM3, AIR);
          expect(found.ok && Math.abs(found.value - addedKg) < 1e-9).toBe(true);
        },
      ),
      { seed: 85 },
    );
  });

  it('refuses a tuning above that of the bare radiator, and says which that is', () => {
    const { tuningHz } = loadedRadiator(radiator, 0, 0.04, AIR);
    const found = addedMassForTuningKg(radiator, tuningHz * 1.1, 0.04, AIR);
    expect(found.ok).toBe(false);
    if (found.ok) return;
    expect(found.problems[0]!.values.highestHz).toBeCloseTo(tuningHz, 9);
    expect(word(found.problems[0]!).sentence).toMatch(/tunes the chamber to [\d.]+ Hz at most/);
    expect(addedMassForTuningKg(radiator, 0, 0.04, AIR).ok).toBe(false);
  });
});
