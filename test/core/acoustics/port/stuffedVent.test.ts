import { describe, expect, it } from 'vitest';
import {
  chamberAdmittance,
  chamberComplianceM3PerPa,
  portAdmittance,
  stuffedVent,
  tubeResonancesHz,
  ventDampingPaSPerM3,
} from '../../../../src/core/acoustics/index.ts';
import { add, magnitude, reciprocal } from '../../../../src/core/math/index.ts';
import { AIR, admittanceAt } from '../sweep.ts';

const vent = stuffedVent({ flowResistivityPaSPerM2: 5000, depthM: 0.04, areaM2: 0.008, effectiveLengthM: 0.1 }, AIR);

describe('stuffedVent', () => {
  it('has σt/S and ρL/S by hand, and is a resistance up to the fourth of them', () => {
    expect(vent.resistancePaSPerM3).toBeCloseTo(25_000, 8);
    expect(vent.massKgPerM4).toBeCloseTo((1.2041 * 0.1) / 0.008, 10);
    expect(2 * Math.PI * vent.resistiveBelowHz * vent.massKgPerM4).toBeCloseTo(25_000 / 4, 8);
  });

  it('is the port branch with its stuffing: at that frequency the phase is atan ¼', () => {
    const port = { areaM2: 0.008, effectiveLengthM: 0.1, loss: null, stuffingPaSPerM3: vent.resistancePaSPerM3 };
    const [there, low] = admittanceAt(portAdmittance(port, 0.03, AIR), [vent.resistiveBelowHz, 1]);
    expect(there!.im / there!.re).toBeCloseTo(-0.25, 10);
    expect(magnitude(low!) * vent.resistancePaSPerM3).toBeCloseTo(1, 4);
  });
});

describe('ventDampingPaSPerM3', () => {
  it('is the real part of chamber and resistance in parallel, greatest at ωRC = 1', () => {
    const f = 50;
    const omega = 2 * Math.PI * f;
    const compliance = chamberComplianceM3PerPa(0.03, AIR);
    const [air] = admittanceAt(chamberAdmittance({ volumeM3: 0.03, absorption: null }, AIR), [f]);
    for (const resistance of [3000, 15_000, 80_000]) {
      const both = reciprocal(add(air!, { re: 1 / resistance, im: 0 }));
      expect(ventDampingPaSPerM3(resistance, compliance, omega) / both.re).toBeCloseTo(1, 12);
    }
    const best = 1 / (omega * compliance);
    expect(ventDampingPaSPerM3(best, compliance, omega)).toBeCloseTo(best / 2, 6);
    for (const other of [0.8, 1.25])
      expect(ventDampingPaSPerM3(other * best, compliance, omega)).toBeLessThan(best / 2);
  });
});

describe('tubeResonancesHz', () => {
  it('gives 683 and 1366 Hz for a 70 mm tube, 0.2 m, flanged and free (physics notes, DUCT-17), below the exact 692 and 1424', () => {
    const found = tubeResonancesHz(0.2 + (0.8217 + 0.6133) * 0.035, 343.2, 2);
    expect(Math.abs(found[0]! / 683 - 1)).toBeLessThan(5e-3);
    expect(Math.abs(found[1]! / 1366 - 1)).toBeLessThan(5e-3);
    expect(found[0]).toBeLessThan(692);
    expect(found[1]).toBe(2 * found[0]!);
  });
});
