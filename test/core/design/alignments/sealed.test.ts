import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chamberAdmittance,
  type DriverParameters,
  driverFigures,
  movingPartsAdmittance,
} from '../../../../src/core/acoustics/index.ts';
import {
  sealedForQtc,
  sealedInVolume,
  sealedMotion,
  sealedPowerConstant,
  sealedResponse,
} from '../../../../src/core/design/alignments/index.ts';
import { add, complex, findMinimum, magnitude, multiply, reciprocal } from '../../../../src/core/math/index.ts';
import { word } from '../../../../src/core/messages/index.ts';
import { AIR, admittanceAt } from '../../acoustics/sweep.ts';

const gain = (qtc: number, f: number): number => f ** 2 / Math.hypot(1 - f ** 2, f / qtc);

describe('sealedResponse', () => {
  it('has the handbook rows: Qtc 0.5 1.554, 0.707 1.000, 1.0 0.786 with 1.25 dB, 1.2 0.736 with 2.41 dB (Small 1972, from memory)', () => {
    for (const [qtc, f3, peakDb] of [
      [0.5, 1.554, 0],
      [Math.SQRT1_2, 1, 0],
      [1, 0.786, 1.25],
      [1.2, 0.736, 2.41],
    ] as const) {
      const found = sealedResponse(qtc);
      expect(Math.abs(found.f3OverFc - f3)).toBeLessThan(6e-4);
      expect(Math.abs(20 * Math.log10(found.peakRatio) - peakDb)).toBeLessThan(6e-3);
    }
  });

  it('agrees with the transfer function itself at f3, at the peak and at fc (seed 81)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 3, noNaN: true }), (qtc) => {
        const found = sealedResponse(qtc);
        expect(gain(qtc, found.f3OverFc)).toBeCloseTo(Math.SQRT1_2, 10);
        expect(gain(qtc, 1)).toBeCloseTo(found.gainAtFc, 12);
        if (found.peakOverFc !== null) {
          expect(gain(qtc, found.peakOverFc)).toBeCloseTo(found.peakRatio, 10);
          const top = findMinimum((f) => -gain(qtc, f), 0.5, found.peakOverFc * 3 + 1, 1e-9);
          expect(-top.value).toBeCloseTo(found.peakRatio, 9);
        } else expect(qtc).toBeLessThanOrEqual(Math.SQRT1_2 + 1e-12);
      }),
      { seed: 81 },
    );
  });
});

const parts: DriverParameters = {
  reOhm: 6.2,
  leH: 0,
  semiInductance: null,
  blTm: 7.5,
  mmsKg: 0.022,
  cmsMPerN: 9e-4,
  rmsKgPerS: 1.1,
  sdM2: 0.0216,
};
const numbers = driverFigures(parts, AIR);
const driver = { fsHz: numbers.fsHz, qts: numbers.qts, vasM3: numbers.vasM3 };

/** The box solved as a circuit at one frequency: volume velocity of the cone at 1 V, m³/s. */
const coneFlow = (volumeM3: number, f: number) => {
  const [moving] = admittanceAt(movingPartsAdmittance(parts), [f]);
  const [air] = admittanceAt(chamberAdmittance({ volumeM3, absorption: null }, AIR), [f]);
  const motor = complex(parts.blTm ** 2 / (parts.reOhm * parts.sdM2 ** 2));
  const pressure = complex(parts.blTm / (parts.reOhm * parts.sdM2));
  return multiply(pressure, reciprocal(add(add(reciprocal(moving!), reciprocal(air!)), motor)));
};

describe('sealed boxes', () => {
  it('raise fs and Qts alike, by the root of 1 + Vas/V', () => {
    const box = sealedInVolume(driver, driver.vasM3 / 3);
    expect(box.fcHz).toBeCloseTo(2 * driver.fsHz, 10);
    expect(box.qtc).toBeCloseTo(2 * driver.qts, 10);
    expect(box.alpha).toBeCloseTo(3, 12);
  });

  it('are found again from the Qtc they give (seed 82)', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 5, noNaN: true }), (rise) => {
        const wanted = sealedForQtc(driver, driver.qts * rise);
        expect(wanted.ok).toBe(true);
        if (wanted.ok) expect(sealedInVolume(driver, wanted.value.volumeM3).qtc / driver.qts).toBeCloseTo(rise, 8);
      }),
      { seed: 82 },
    );
  });

  it('cannot lower a Q, and say so', () => {
    for (const qtc of [0.3, driver.qts]) {
      const box = sealedForQtc(driver, qtc);
      expect(box.ok).toBe(false);
      if (!box.ok) expect(word(box.problems[0]!).remedy).toContain('Ask for a Qtc above 0.486');
    }
  });

  it('respond as the circuit does: −3 dB at f3 re the flat range', () => {
    for (const litres of [10, 25, 60]) {
      const box = sealedInVolume(driver, litres / 1000);
      const acceleration = (f: number) => f * magnitude(coneFlow(litres / 1000, f));
      expect(acceleration(box.f3Hz) / acceleration(1e5)).toBeCloseTo(Math.SQRT1_2, 5);
    }
  });

  it('move as the circuit says', () => {
    for (const f of [10, 40, 90, 300]) {
      const { excursionPeakM, pressurePa } = sealedMotion(parts, { volumeM3: 0.02, distanceM: 2 }, 2.83, f, AIR);
      const flow = 2.83 * magnitude(coneFlow(0.02, f));
      expect(excursionPeakM / ((flow * Math.SQRT2) / (2 * Math.PI * f * parts.sdM2))).toBeCloseTo(1, 10);
      expect(pressurePa / ((AIR.densityKgPerM3 * f * flow) / 2)).toBeCloseTo(1, 10);
    }
  });

  it('have the displacement-limited constant 0.85 at its best Qtc of 1.1 (Small 1973, from memory)', () => {
    const air = { densityKgPerM3: 1.18, soundSpeedMPerS: 345 };
    const best = findMinimum((qtc) => -sealedPowerConstant(qtc, air), 0.75, 2, 1e-8);
    expect(Math.abs(-best.value - 0.85)).toBeLessThan(0.005);
    expect(Math.abs(best.x - 1.1)).toBeLessThan(0.05);
    // At Qtc 1/√2 the excursion does not exceed that at zero frequency and f3 is fc.
    expect(sealedPowerConstant(Math.SQRT1_2, air)).toBeCloseTo((4 * Math.PI ** 3 * 1.18) / 345, 10);
  });
});
