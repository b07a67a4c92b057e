import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chamberAdmittance,
  chamberComplianceM3PerPa,
  type DriverParameters,
  driverFigures,
  leakAdmittance,
  movingPartsAdmittance,
  portAdmittance,
} from '../../../../src/core/acoustics/index.ts';
import {
  alphaFromPeaks,
  chebyshevRipple,
  flatVentedAlignment,
  keeleVented,
  margolisSmallVented,
  resonanceFromPeaksHz,
  type VentedBox,
  ventedB4,
  ventedBb4,
  ventedBessel,
  ventedC4,
  ventedCoefficients,
  ventedExcursionPeak,
  ventedExcursionRatio,
  ventedFromCoefficients,
  ventedHalfPower,
  ventedImpedancePeaks,
  ventedPowerConstant,
  ventedQb3,
  ventedResponse,
  ventedTransfer,
} from '../../../../src/core/design/alignments/index.ts';
import {
  add,
  type Complex,
  complex,
  findRoot,
  magnitude,
  multiply,
  reciprocal,
} from '../../../../src/core/math/index.ts';
import { word } from '../../../../src/core/messages/index.ts';
import { AIR, admittanceAt } from '../../acoustics/sweep.ts';

const parts: DriverParameters = {
  reOhm: 5.6,
  leH: 0,
  semiInductance: null,
  blTm: 9.2,
  mmsKg: 0.03,
  cmsMPerN: 7e-4,
  rmsKgPerS: 1.5,
  sdM2: 0.022,
};
const numbers = driverFigures(parts, AIR);

/** The same box as an acoustic circuit of branches, at 1 V: chamber pressure and the cone's flow. */
const solve = (
  box: VentedBox,
  f: number,
): { readonly cone: Complex; readonly pressure: Complex; readonly airY: Complex } => {
  const volumeM3 = numbers.vasM3 / box.alpha;
  const fB = box.h * numbers.fsHz;
  const compliance = chamberComplianceM3PerPa(volumeM3, AIR);
  const massKgPerM4 = 1 / ((2 * Math.PI * fB) ** 2 * compliance);
  const port = { areaM2: 0.003, effectiveLengthM: (massKgPerM4 * 0.003) / AIR.densityKgPerM3, loss: null };
  const at = (y: Parameters<typeof admittanceAt>[0]) => admittanceAt(y, [f])[0]!;
  let airY = add(at(chamberAdmittance({ volumeM3, absorption: null }, AIR)), at(portAdmittance(port, volumeM3, AIR)));
  if (box.ql !== null) airY = add(airY, at(leakAdmittance({ volumeM3, leak: { q: box.ql, atHz: fB } }, AIR)));
  const motor = complex(parts.blTm ** 2 / (parts.reOhm * parts.sdM2 ** 2));
  const total = add(add(reciprocal(at(movingPartsAdmittance(parts))), motor), reciprocal(airY));
  const cone = multiply(complex(parts.blTm / (parts.reOhm * parts.sdM2)), reciprocal(total));
  return { cone, pressure: multiply(cone, reciprocal(airY)), airY };
};
/** Net flow of cone, port and leak = what the chamber's compliance takes. */
const netFlow = (box: VentedBox, f: number): number => {
  const compliance = chamberComplianceM3PerPa(numbers.vasM3 / box.alpha, AIR);
  return magnitude(solve(box, f).pressure) * 2 * Math.PI * f * compliance;
};

const box = (h: number, alpha: number, ql: number | null): VentedBox => ({ h, alpha, qt: numbers.qts, ql });

describe('the vented transfer function', () => {
  it('is what a circuit of chamber, port, leak and driver branches gives', () => {
    for (const example of [box(0.85, 1.8, 10), box(1.3, 0.7, 4), box(1, 2.5, null)]) {
      const flat = netFlow(example, 1e6) * 1e6;
      for (const f of [12, 25, 31, 44, 70, 150]) {
        const expected = (netFlow(example, f) * f) / flat;
        expect(magnitude(ventedResponse(example, f / numbers.fsHz)) / expected).toBeCloseTo(1, 6);
      }
    }
  });

  it('passes its half-power point and stays above from there on (seed 83)', () => {
    const any = fc.record({
      h: fc.double({ min: 0.4, max: 2.5, noNaN: true }),
      alpha: fc.double({ min: 0.2, max: 8, noNaN: true }),
      qt: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
      ql: fc.constantFrom(null, 3, 7, 20),
    });
    fc.assert(
      fc.property(any, (example) => {
        const coefficients = ventedCoefficients(example);
        const f3 = ventedHalfPower(coefficients);
        expect(magnitude(ventedTransfer(coefficients, f3))).toBeCloseTo(Math.SQRT1_2, 6);
        for (let f = f3 * 1.001; f < 50; f *= 1.02) {
          expect(magnitude(ventedTransfer(coefficients, f))).toBeGreaterThan(Math.SQRT1_2 * 0.9999);
        }
      }),
      { seed: 83 },
    );
  });
});

describe('alignments', () => {
  it('B4: QT 0.383, α 1.414, h 1 lossless (Thiele 1961, alignment 5); 0.405 and 1.061 at QL 7 (Small 1973, from memory)', () => {
    const [lossless, leaky] = [ventedB4(null)!, ventedB4(7)!];
    expect(Math.abs(lossless.qt - 0.3827)).toBeLessThan(5e-5);
    expect(lossless.alpha).toBeCloseTo(Math.SQRT2, 12);
    expect(leaky.qt).toBeCloseTo(0.4048, 4);
    expect(leaky.alpha).toBeCloseTo(1.0613, 4);
    for (const found of [lossless, leaky]) {
      expect(found.h).toBeCloseTo(1, 12);
      expect(found.f3OverFs).toBeCloseTo(1, 10);
      // Maximally flat: 1 + ω^−8 and nothing else.
      for (const f of [0.7, 1.5, 3]) expect(magnitude(ventedResponse(found, f)) ** -2).toBeCloseTo(1 + f ** -8, 9);
    }
    expect(ventedB4(1.2)).toBeNull();
  });

  it('QB3: |G|^−2 = 1 + A ω^−6 + ω^−8 for every QT and leak; Thiele’s rows 1 and 3 (printed h 2.0, α 10.48; 1.42, 4.46)', () => {
    for (const [qt, h, alpha] of [
      [0.18, 2, 10.48],
      [0.259, 1.42, 4.46],
    ] as const) {
      const found = ventedQb3(qt, null);
      expect(Math.abs(found.h / h - 1)).toBeLessThan(0.01);
      expect(Math.abs(found.alpha / alpha - 1)).toBeLessThan(0.01);
    }
    for (const qt of [0.15, 0.22, 0.3, 0.36])
      for (const ql of [null, 5, 15]) {
        const coefficients = ventedCoefficients(ventedQb3(qt, ql));
        const rest = (w: number) => (magnitude(ventedTransfer(coefficients, w)) ** -2 - 1 - w ** -8) * w ** 6;
        expect(rest(0.9)).toBeCloseTo(rest(2), 7);
        expect(ventedQb3(qt, ql).qt).toBe(qt);
      }
  });

  it('C4: equal ripple of the printed size, 0.46 dB at QT 0.6 and QL 7 (printed design table: h 0.68, α 0.275, f3 0.588)', () => {
    const found = ventedC4(0.6, 7)!;
    expect(Math.abs(found.h - 0.68)).toBeLessThan(3e-3);
    expect(Math.abs(found.alpha - 0.275)).toBeLessThan(1e-3);
    expect(Math.abs(found.f3OverFs - 0.588)).toBeLessThan(1e-3);
    const levels = Array.from(
      { length: 4000 },
      (_, i) => 20 * Math.log10(magnitude(ventedResponse(found, 0.66 * 1.002 ** i))),
    );
    const ripple = Math.max(...levels) - Math.min(...levels);
    expect(ripple).toBeCloseTo(20 * Math.log10(chebyshevRipple(found.k)), 3);
    expect(Math.abs(ripple - 0.46)).toBeLessThan(3e-3);
    // A Chebyshev response ends its band at 0 dB and swings between 0 dB and the ripple: its own maxima are alike.
    expect(Math.abs(levels.at(-1)!)).toBeLessThan(0.01);
  });

  it('C4 meets B4 at k = 1, spans what it says it spans and returns null elsewhere', () => {
    const b4 = ventedB4(7)!;
    expect(ventedC4(b4.qt * 1.0001, 7)!.k).toBeCloseTo(1, 3);
    expect(ventedC4(b4.qt * 0.9999, 7)!.k).toBeCloseTo(1, 3);
    for (const qt of [0.25, 0.3, 0.5, 0.9]) expect(ventedC4(qt, null)?.alpha, `QT ${qt}`).toBeGreaterThan(0);
    expect(ventedC4(1.5, null)).toBeNull();
    expect(ventedC4(0.1, null)).toBeNull();
    expect(ventedC4(0.5, 1.2)).toBeNull();
  });

  it('Bessel: delay as flat as can be; QT 0.316, h 0.976, α 2.33 (from memory)', () => {
    const found = ventedBessel(null)!;
    expect(found.qt).toBeCloseTo(1 / Math.sqrt(10), 12);
    expect(found.h).toBeCloseTo(0.9759, 4);
    expect(found.alpha).toBeCloseTo(7 / 3, 10);
    expect(ventedBessel(7)!.qt).toBeGreaterThan(found.qt);
  });

  it('box tuned to fs: B4 where QT is B4’s, α = 1/(2QT²) − 2', () => {
    expect(ventedBb4(0.38268343236, null).alpha).toBeCloseTo(Math.SQRT2, 8);
    expect(ventedBb4(0.3, null).alpha).toBeCloseTo(1 / 0.18 - 2, 12);
    const { a1, a2 } = ventedCoefficients(ventedBb4(0.33, 8));
    expect(a1 ** 2).toBeCloseTo(2 * a2, 12);
  });

  it('coefficients and box are inverse to one another (seed 84)', () => {
    const any = fc.record({
      h: fc.double({ min: 0.75, max: 1.35, noNaN: true }),
      alpha: fc.double({ min: 0.3, max: 6, noNaN: true }),
      qt: fc.double({ min: 0.25, max: 0.55, noNaN: true }),
      ql: fc.constantFrom(null, 5, 7, 20),
    });
    fc.assert(
      fc.property(any, (example) => {
        const back = ventedFromCoefficients(ventedCoefficients(example), example.ql)!;
        expect(back.h).toBeCloseTo(example.h, 8);
        expect(back.qt).toBeCloseTo(example.qt, 8);
        expect(back.alpha).toBeCloseTo(example.alpha, 7);
      }),
      { seed: 84 },
    );
  });

  it('old fits stay near exact QB3 at QL 7 as far as their docstrings say', () => {
    for (const qts of [0.25, 0.3, 0.35, 0.4]) {
      const exact = ventedQb3(qts, 7);
      const fit = margolisSmallVented(qts);
      expect(Math.abs(fit.volumeOverVas * exact.alpha - 1)).toBeLessThan(0.13);
      expect(Math.abs(fit.tuningOverFs / exact.h - 1)).toBeLessThan(0.045);
      expect(Math.abs(fit.f3OverFs / exact.f3OverFs - 1)).toBeLessThan(0.033);
    }
    expect(keeleVented(0.35).volumeOverVas * ventedQb3(0.35, 7).alpha).toBeCloseTo(1.32, 2);
  });
});

describe('flatVentedAlignment', () => {
  it('answers the worked example within chart reading: 37 L, 35 Hz, f3 38 Hz (Small 1973, part III, from memory)', () => {
    const found = flatVentedAlignment({ fsHz: 33, qts: 0.367346939, vasM3: 0.057 }, 7);
    expect(found.ok).toBe(true);
    if (!found.ok) return;
    expect(found.value.kind).toBe('QB3');
    expect(Math.abs(found.value.volumeM3 / 0.037 - 1)).toBeLessThan(0.03);
    expect(Math.abs(found.value.tuningHz / 35 - 1)).toBeLessThan(0.03);
    expect(Math.abs(found.value.f3Hz / 38 - 1)).toBeLessThan(0.03);
  });

  it('chooses by the driver’s Q, without a jump between the kinds', () => {
    const at = (qts: number) => {
      const found = flatVentedAlignment({ fsHz: 30, qts, vasM3: 0.1 }, 7);
      if (!found.ok) throw new Error(found.problems[0]!.code);
      return found.value;
    };
    const b4 = ventedB4(7)!.qt;
    expect([at(0.3).kind, at(b4).kind, at(0.5).kind]).toEqual(['QB3', 'B4', 'C4']);
    expect(Math.abs(at(b4 * 0.999).volumeM3 / at(b4 * 1.001).volumeM3 - 1)).toBeLessThan(0.02);
    expect(Math.abs(at(b4 * 0.999).tuningHz / at(b4 * 1.001).tuningHz - 1)).toBeLessThan(0.01);
  });

  it('really is flat: nothing rises more than 0.5 dB above the band, for every driver and leak it accepts (seed 85)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.15, max: 0.75, noNaN: true }), fc.constantFrom(3, 5, 7, 10, 15, 30), (qts, ql) => {
        const found = flatVentedAlignment({ fsHz: 30, qts, vasM3: 0.05 }, ql);
        if (!found.ok) {
          expect(found.problems[0]!.values.most).toBeLessThan(qts);
          return;
        }
        expect(found.value.volumeM3).toBeGreaterThan(0);
        const f3 = found.value.f3OverFs;
        for (let f = f3 * 1.2; f < 30; f *= 1.01) {
          const level = 20 * Math.log10(magnitude(ventedResponse(found.value, f)));
          expect(level).toBeLessThan(0.51);
          expect(level).toBeGreaterThan(-3.01);
        }
      }),
      { seed: 85, numRuns: 200 },
    );
  });

  it('names the range for drivers that no flat vented box suits', () => {
    for (const qts of [0.1, 1]) {
      const found = flatVentedAlignment({ fsHz: 30, qts, vasM3: 0.1 }, 7);
      expect(found.ok).toBe(false);
      if (!found.ok)
        expect(word(found.problems[0]!).sentence).toMatch(/no flat vented alignment with QL = 7.*from 0\.15 to 0\.60/);
    }
    expect(flatVentedAlignment({ fsHz: 30, qts: 0.3, vasM3: 0.1 }, 1.2).ok).toBe(false);
  });
});

describe('impedance peaks', () => {
  it('are where the lossless circuit’s impedance peaks', () => {
    const quiet = { ...parts, rmsKgPerS: 1e-6 };
    const example = box(1.07, 1.5, null);
    const { lowerHz, upperHz } = ventedImpedancePeaks(numbers.fsHz, 1.07 * numbers.fsHz, 1.5);
    // Resonance: the reactances of moving parts and air cancel.
    const reactance = (f: number) => {
      const moving = reciprocal(admittanceAt(movingPartsAdmittance(quiet), [f])[0]!);
      return moving.im + reciprocal(solve(example, f).airY).im;
    };
    for (const peak of [lowerHz, upperHz]) {
      const found = findRoot(reactance, peak * 0.97, peak * 1.03, 1e-9).x;
      expect(found / peak).toBeCloseTo(1, 8);
    }
  });

  it('give back α and fs (seed 86)', () => {
    const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(number(15, 80), number(0.5, 2), number(0.1, 10), (fs, h, alpha) => {
        const peaks = ventedImpedancePeaks(fs, h * fs, alpha);
        expect(alphaFromPeaks(peaks, h * fs) / alpha).toBeCloseTo(1, 7);
        expect(resonanceFromPeaksHz(peaks, h * fs)).toBeCloseTo(fs, 8);
        expect(peaks.lowerHz).toBeLessThan(h * fs);
        expect(peaks.upperHz).toBeGreaterThan(h * fs);
      }),
      { seed: 86 },
    );
  });
});

describe('cone excursion', () => {
  it('is what the circuit gives, and rests at the tuning of a lossless box', () => {
    for (const example of [box(0.9, 1.2, 7), box(1.1, 1.6, null)]) {
      // Relative to zero frequency without a box: x0 = Bl V Cms/Re.
      const x0 = (parts.blTm * parts.cmsMPerN) / parts.reOhm;
      for (const f of [10, 28, 45, 90]) {
        const x = magnitude(solve(example, f).cone) / (2 * Math.PI * f * parts.sdM2);
        expect(ventedExcursionRatio(example, f / numbers.fsHz) / (x / x0)).toBeCloseTo(1, 8);
      }
    }
    expect(ventedExcursionRatio(ventedB4(null)!, 1)).toBeCloseTo(0, 12);
  });

  it('peaks above the tuning at 0.243 for lossless B4 (derived, reference notes vb-xmax-b4)', () => {
    const peak = ventedExcursionPeak(ventedB4(null)!);
    expect(peak.ratio).toBeCloseTo(0.24326, 5);
    expect(peak.frequencyOverFs).toBeCloseTo(1.4515, 3);
    const air = { densityKgPerM3: 1.18, soundSpeedMPerS: 345 };
    expect(ventedPowerConstant(ventedB4(null)!, air)).toBeCloseTo((4 * Math.PI ** 3 * 1.18) / 345 / peak.ratio ** 2, 6);
  });
});
