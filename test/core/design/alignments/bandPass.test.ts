import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bandPassForGain,
  bandPassForLower,
  bandPassResponse,
  bandPassShape,
} from '../../../../src/core/design/alignments/index.ts';
import { add, complex, divide, magnitude, multiply, reciprocal } from '../../../../src/core/math/index.ts';
import { word } from '../../../../src/core/messages/index.ts';

const db = (x: number): number => 20 * Math.log10(x);
const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });

describe('bandPassShape', () => {
  it('has the printed table: b 0.7206, 0.9560, 1.2712 and 0, 0.35, 1.25 dB for S 0.7, 0.6, 0.5 (Geddes 1989, as in handbooks)', () => {
    for (const [s, b, ripple] of [
      [0.7, 0.7206, 0],
      [0.6, 0.956, 0.35],
      [0.5, 1.2712, 1.25],
    ] as const) {
      expect(Math.abs(bandPassShape(s).b - b)).toBeLessThan(6e-5);
      expect(Math.abs(db(bandPassShape(s).rippleRatio) - ripple)).toBeLessThan(6e-3);
    }
  });

  it('tells the humps of the response itself, none above S = 0.7071', () => {
    for (const s of [0.4, 0.55, 0.65, 0.8]) {
      const box = { s, qbp: 0.6, tuningHz: 60 };
      let highest = 0;
      for (let f = 10; f < 400; f *= 1.0005) highest = Math.max(highest, magnitude(bandPassResponse(box, f)));
      expect(highest / (2 * s * 0.6) ** 2).toBeCloseTo(bandPassShape(s).rippleRatio, 6);
    }
  });
});

describe('bandPassForLower', () => {
  const driver = { fsHz: 30, qts: 0.3, vasM3: 0.06 };

  it('gives the worked design: 10.58 and 15.07 L, 66.95 Hz, −1.12 dB, up to 112.06 Hz (reference case)', () => {
    const found = bandPassForLower(driver, 0.7, 40);
    expect(found.ok).toBe(true);
    if (!found.ok) return;
    expect(found.value.frontM3).toBeCloseTo(0.010584, 9);
    expect(found.value.rearM3).toBeCloseTo(0.0150732726, 9);
    expect(found.value.tuningHz).toBeCloseTo(66.9514753, 6);
    expect(db(found.value.gainRatio)).toBeCloseTo(-1.12447251, 7);
    expect(found.value.upperHz).toBeCloseTo(112.062501, 5);
  });

  it('is 3.000 dB down at both ends, and the circuit of chambers and cone gives the same curve (seed 82)', () => {
    fc.assert(
      fc.property(number(0.4, 0.9), number(0.2, 0.6), number(1.05, 4), (s, qts, ratio) => {
        const own = { fsHz: 35, qts, vasM3: 0.05 };
        const found = bandPassForLower(own, s, 35 * ratio);
        if (!found.ok) {
          expect(found.problems[0]!.code).toBe('acoustics.band-pass-too-low');
          return;
        }
        const box = found.value;
        for (const f of [box.lowerHz, box.upperHz])
          expect(db(magnitude(bandPassResponse(box, f)) / box.gainRatio)).toBeCloseTo(-3, 8);
        // Acoustic circuit in units of the driver: mass 1, compliance 1/ωs², chambers V/Vas of it.
        const omegaS = 2 * Math.PI * own.fsHz;
        const compliance = 1 / omegaS ** 2;
        const frontC = (compliance * box.frontM3) / own.vasM3;
        const rearC = (compliance * box.rearM3) / own.vasM3;
        const mass = 1 / ((2 * Math.PI * box.tuningHz) ** 2 * frontC);
        for (const f of [20, 50, 90, 200]) {
          const omega = 2 * Math.PI * f;
          const port = complex(0, omega * mass);
          const front = reciprocal(add(complex(0, omega * frontC), reciprocal(port)));
          const own1 = complex(omegaS / qts, omega - 1 / (omega * compliance) - 1 / (omega * rearC));
          const flow = multiply(reciprocal(add(own1, front)), divide(front, port));
          const level = magnitude(multiply(flow, complex(0, omega)));
          expect(magnitude(bandPassResponse(box, f)) / level).toBeCloseTo(1, 9);
        }
      }),
      { seed: 82 },
    );
  });

  it('says which cut-off is the least, where the rear chamber would be endless', () => {
    const found = bandPassForLower({ ...driver, qts: 0.6 }, 0.7, 15);
    expect(found.ok).toBe(false);
    if (found.ok) return;
    const leastHz = Number(found.problems[0]!.values.leastHz);
    expect(bandPassForLower({ ...driver, qts: 0.6 }, 0.7, leastHz * 1.001).ok).toBe(true);
    expect(bandPassForLower({ ...driver, qts: 0.6 }, 0.7, leastHz * 0.999).ok).toBe(false);
    expect(word(found.problems[0]!).sentence).toMatch(/^A band-pass box raises the Q of a driver/);
    expect(bandPassForLower(driver, 0.7, Number.NaN).ok).toBe(false);
  });
});

describe('bandPassForGain', () => {
  it('meets the wished level and agrees with the design by its lower end (seed 83)', () => {
    fc.assert(
      fc.property(number(0.45, 0.75), number(0.6, 2.5), (s, gain) => {
        const driver = { fsHz: 40, qts: 0.35, vasM3: 0.04 };
        const found = bandPassForGain(driver, s, gain);
        if (!found.ok) return;
        expect(found.value.gainRatio).toBeCloseTo(gain, 12);
        const back = bandPassForLower(driver, s, found.value.lowerHz);
        expect(back.ok && Math.abs(back.value.rearM3 / found.value.rearM3 - 1) < 1e-9).toBe(true);
      }),
      { seed: 83 },
    );
  });
});
