import { describe, expect, it } from 'vitest';
import { complex, divide, multiply } from '../../../src/core/math/complex.ts';
import { randomStream } from '../../../src/core/math/randomStream.ts';
import type { MeasuredCurve } from '../../../src/core/measured/curveTable.ts';
import { prepareMeasured } from '../../../src/core/measured/prepareMeasured.ts';
import { word } from '../../../src/core/messages/word.ts';

const DEG = 180 / Math.PI;
const SOUND_SPEED = 343.2;
const logGrid = (fromHz: number, toHz: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => fromHz * (toHz / fromHz) ** (i / (count - 1)));
const evenGrid = (stepHz: number, count: number): number[] => Array.from({ length: count }, (_, i) => stepHz * (i + 1));

/** Second-order high-pass at 80 Hz, second-order low-pass at 15 kHz, as complex numbers. */
const driver = (f: number) => {
  const x = f / 80;
  const y = f / 15000;
  return multiply(
    divide(complex(-x * x), complex(1 - x * x, x / 0.9)),
    divide(complex(1), complex(1 - y * y, y / 0.7)),
  );
};
const phaseOf = (f: number) => {
  const x = f / 80;
  const y = f / 15000;
  return Math.PI - Math.atan2(x / 0.9, 1 - x * x) - Math.atan2(y / 0.7, 1 - y * y);
};
/**
 * The slope fitted below 20 kHz is 1.2, the last slope of the low-pass 2; a slope that errs by n beyond f2 adds nearly
 * (2n/π)(f/f2) of phase, which looks like a delay of n/(π² f2).
 */
const DELAY_ERROR_S = 0.8 / (Math.PI ** 2 * 20000);
const taken = { voltageV: 2.83, distanceM: 1 };
const responseOn = (f: readonly number[], delayS: number | null, polarity = 1): MeasuredCurve => ({
  quantity: 'response',
  frequenciesHz: f,
  magnitudes: f.map((x) => 88 + 20 * Math.log10(Math.hypot(driver(x).re, driver(x).im))),
  phasesDeg:
    delayS === null
      ? null
      : f.map((x) => {
          const z = driver(x);
          const phase = Math.atan2(polarity * z.im, polarity * z.re) - 2 * Math.PI * x * delayS;
          return (phase - 2 * Math.PI * Math.round(phase / (2 * Math.PI))) * DEG;
        }),
  taken,
});
/** Greatest difference of phase in degrees over a range, whole turns apart. */
const phaseError = (curve: MeasuredCurve, fromHz: number, toHz: number, offsetRad = 0): number => {
  const { frequenciesHz, phasesRad } = prepareMeasured(curve, SOUND_SPEED);
  let worst = 0;
  for (const [i, f] of frequenciesHz.entries()) {
    if (f < fromHz || f > toHz) continue;
    const gap = phasesRad[i]! - phaseOf(f) - offsetRad;
    worst = Math.max(worst, Math.abs(gap - 2 * Math.PI * Math.round(gap / (2 * Math.PI))) * DEG);
  }
  return worst;
};

describe('prepareMeasured', () => {
  it('gives pascal per volt at one metre', () => {
    const curve: MeasuredCurve = {
      quantity: 'response',
      frequenciesHz: [100, 1000],
      magnitudes: [88, 94],
      phasesDeg: null,
      taken: { voltageV: 2, distanceM: 0.5 },
    };
    // 94 dB re 20 µPa is 1.0024 Pa; at 0.5 m with 2 V that is 0.2506 Pa/V at 1 m.
    expect(prepareMeasured(curve, SOUND_SPEED).magnitudes[1]).toBeCloseTo((20e-6 * 10 ** 4.7 * 0.5) / 2, 12);
  });

  it('finds minimum phase where no phase is given, and says so', () => {
    const curve = responseOn(logGrid(10, 40000, 400), null);
    // An octave and a half inside the ends, the slopes beyond them being fitted: measured 1.0 degrees.
    expect(phaseError(curve, 30, 14000)).toBeLessThan(1.5);
    const { notes, phaseFrom } = prepareMeasured(curve, SOUND_SPEED);
    expect(phaseFrom).toBe('minimum');
    expect(notes.map((n) => n.code)).toEqual(['measured.minimum-phase']);
  });

  it.each([
    [0, 1],
    [0.0005, 1],
    [1 / SOUND_SPEED, 1],
    [1 / SOUND_SPEED, -1],
    [0.012, 1],
  ])('takes out a delay of %d s (polarity %d)', (delayS, polarity) => {
    const curve = responseOn(logGrid(20, 20000, 300), delayS, polarity);
    const { delayRemovedS, notes } = prepareMeasured(curve, SOUND_SPEED);
    expect(Math.abs(delayRemovedS! - delayS)).toBeLessThan(DELAY_ERROR_S);
    const left = 2 * Math.PI * (delayRemovedS! - delayS);
    const { frequenciesHz, phasesRad } = prepareMeasured(curve, SOUND_SPEED);
    for (const [i, f] of frequenciesHz.entries()) {
      const gap = phasesRad[i]! - left * f - phaseOf(f) - (polarity < 0 ? Math.PI : 0);
      expect(Math.abs(gap - 2 * Math.PI * Math.round(gap / (2 * Math.PI)))).toBeLessThan(1e-9);
    }
    expect(notes.map((n) => n.code)).toEqual(['measured.delay-removed']);
    expect(word(notes[0]!).sentence).toContain(`${(delayRemovedS! * 1000).toFixed(2)} ms`.replace('-', '−'));
  });

  it('finds the delay through 5 degrees of noise in the phase (seeds 71 to 78)', () => {
    const clean = responseOn(logGrid(20, 20000, 300), 1 / SOUND_SPEED);
    const without = prepareMeasured(clean, SOUND_SPEED).delayRemovedS!;
    for (let seed = 71; seed <= 78; seed++) {
      const { normal } = randomStream(seed);
      const noisy = { ...clean, phasesDeg: clean.phasesDeg!.map((deg) => deg + 5 * normal()) };
      // 0.087 rad over 100 points spread by 2.6 kHz: 0.087/(2π·2600·√100) = 0.53 µs standard deviation; four of them.
      expect(Math.abs(prepareMeasured(noisy, SOUND_SPEED).delayRemovedS! - without)).toBeLessThan(2.1e-6);
    }
  });

  it('gathers a dense even grid and keeps its phase, whose steps are far beyond half a turn when wrapped', () => {
    const curve = responseOn(evenGrid(2, 10000), 1 / SOUND_SPEED);
    const { frequenciesHz, delayRemovedS } = prepareMeasured(curve, SOUND_SPEED);
    expect(frequenciesHz.length).toBeLessThan(500);
    expect(Math.abs(delayRemovedS! - 1 / SOUND_SPEED)).toBeLessThan(DELAY_ERROR_S);
    // That delay is 1.7 degrees at 1 kHz.
    expect(phaseError(curve, 20, 1000)).toBeLessThan(360 * 1000 * DELAY_ERROR_S);
  });

  it('finds the phase of an impedance from its modulus', () => {
    // Coil of 6 Ω and 0.5 mH with a resonance at 45 Hz (30 Ω, Q 4), a general R-L-C circuit.
    const impedance = (f: number) => {
      const x = f / 45;
      const bump = divide(complex(0, (30 * x) / 4), complex(1 - x * x, x / 4));
      return complex(6 + bump.re, 2 * Math.PI * f * 0.5e-3 + bump.im);
    };
    const f = logGrid(5, 40000, 600);
    const curve: MeasuredCurve = {
      quantity: 'impedance',
      frequenciesHz: f,
      magnitudes: f.map((x) => Math.hypot(impedance(x).re, impedance(x).im)),
      phasesDeg: null,
      taken,
    };
    const { phasesRad, magnitudes } = prepareMeasured(curve, SOUND_SPEED);
    for (const [i, x] of f.entries()) {
      if (x < 15 || x > 15000) continue;
      const { re, im } = impedance(x);
      // Measured 0.11 degrees: the polygon, and the coil not yet being pure at 40 kHz.
      expect(Math.abs(phasesRad[i]! - Math.atan2(im, re)) * DEG).toBeLessThan(0.2);
      expect(magnitudes[i]).toBeCloseTo(Math.hypot(re, im), 10);
    }
    const given = { ...curve, phasesDeg: f.map((x) => Math.atan2(impedance(x).im, impedance(x).re) * DEG) };
    const kept = prepareMeasured(given, SOUND_SPEED);
    expect(kept.phaseFrom).toBe('measured');
    expect(kept.phasesRad[100]).toBeCloseTo(given.phasesDeg[100]! / DEG, 12);
  });

  it('throws on what the document should never hold', () => {
    const good = responseOn([100, 200, 300], null);
    expect(() => prepareMeasured({ ...good, magnitudes: [1, 2] }, SOUND_SPEED)).toThrow(RangeError);
    expect(() => prepareMeasured({ ...good, frequenciesHz: [100, 100, 300] }, SOUND_SPEED)).toThrow(RangeError);
    expect(() => prepareMeasured({ ...good, phasesDeg: [1] }, SOUND_SPEED)).toThrow(RangeError);
    expect(() => prepareMeasured({ ...good, quantity: 'impedance', magnitudes: [1, 0, 1] }, SOUND_SPEED)).toThrow(
      RangeError,
    );
    expect(() => prepareMeasured({ ...good, taken: { voltageV: 0, distanceM: 1 } }, SOUND_SPEED)).toThrow(RangeError);
  });
});
