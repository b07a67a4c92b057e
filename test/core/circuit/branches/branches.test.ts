import { describe, expect, it } from 'vitest';
import {
  type AdmittanceBranch,
  capacitor,
  coil,
  inductor,
  jumper,
  type Part,
  partBranches,
  resistor,
  semiInductance,
  tabulatedImpedance,
} from '../../../../src/core/circuit/index.ts';
import { logOmegas } from '../randomCircuit.ts';

const omegas = logOmegas(5, 40000, 23);
const nodes: [string, string] = ['a', 'b'];

function impedanceOf(branch: AdmittanceBranch, at = omegas) {
  const re = new Float64Array(at.length);
  const im = new Float64Array(at.length);
  branch.admittance(at, re, im);
  return re
    .map((x, f) => x / (x * x + im[f]! ** 2))
    .reduce<{ re: number; im: number }[]>((all, r, f) => {
      all.push({ re: r, im: -im[f]! / (re[f]! ** 2 + im[f]! ** 2) });
      return all;
    }, []);
}

/** Each branch as a function of its values, with values to try. */
const makers: Record<string, { make: (v: Record<string, number>) => AdmittanceBranch; at: Record<string, number> }> = {
  resistor: { make: (v) => resistor('R', nodes, v.ohm!), at: { ohm: 8.2 } },
  capacitor: {
    make: (v) => capacitor('C', nodes, { farad: v.farad!, esrOhm: v.esrOhm! }),
    at: { farad: 15e-6, esrOhm: 0.7 },
  },
  inductor: {
    make: (v) => inductor('L', nodes, { henry: v.henry!, dcrOhm: v.dcrOhm!, coreLossTangent: v.coreLossTangent! }),
    at: { henry: 1.8e-3, dcrOhm: 0.4, coreLossTangent: 0.03 },
  },
  semiInductance: {
    make: (v) => semiInductance('K', nodes, { kOhmSn: v.kOhmSn!, exponent: v.exponent! }),
    at: { kOhmSn: 0.02, exponent: 0.63 },
  },
  coil: {
    make: (v) =>
      coil('LS', nodes, {
        reOhm: v.reOhm!,
        leH: v.leH!,
        semiInductance: { kOhmSn: v.kOhmSn!, exponent: v.exponent! },
      }),
    at: { reOhm: 6, leH: 0.2e-3, kOhmSn: 0.02, exponent: 0.63 },
  },
};

describe.each(Object.entries(makers))('%s', (_kind, { make, at }) => {
  it.each(Object.keys(at))('derivative by %s agrees with a central difference', (name) => {
    const step = 1e-6;
    const value = at[name]!;
    const [re, im, upRe, upIm, downRe, downIm] = Array.from({ length: 6 }, () => new Float64Array(omegas.length)) as [
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    const branch = make(at);
    expect(branch.derivatives?.[name]?.value).toBe(value);
    branch.derivatives![name]!.derivative(omegas, re, im);
    make({ ...at, [name]: value * (1 + step) }).admittance(omegas, upRe, upIm);
    make({ ...at, [name]: value * (1 - step) }).admittance(omegas, downRe, downIm);
    for (let f = 0; f < omegas.length; f++) {
      const admittance = Math.hypot(upRe[f]!, upIm[f]!);
      const expectedRe = (upRe[f]! - downRe[f]!) / (2 * step);
      const expectedIm = (upIm[f]! - downIm[f]!) / (2 * step);
      // Relative to the admittance: rounding in the difference is 1e-16 / 1e-6.
      expect(Math.abs(re[f]! * value - expectedRe) / admittance).toBeLessThan(1e-8);
      expect(Math.abs(im[f]! * value - expectedIm) / admittance).toBeLessThan(1e-8);
    }
  });
});

describe('impedances', () => {
  it('of a coil with winding and core: r + ωL tanδ + jωL', () => {
    const z = impedanceOf(inductor('L', nodes, { henry: 2e-3, dcrOhm: 0.5, coreLossTangent: 0.02 }));
    z.forEach(({ re, im }, f) => {
      expect(re / (0.5 + omegas[f]! * 2e-3 * 0.02)).toBeCloseTo(1, 9);
      expect(im / (omegas[f]! * 2e-3)).toBeCloseTo(1, 9);
    });
  });

  it('of a capacitor: r + 1/(jωC)', () => {
    impedanceOf(capacitor('C', nodes, { farad: 4.7e-6, esrOhm: 0.2 })).forEach(({ re, im }, f) => {
      expect(re).toBeCloseTo(0.2, 9);
      expect(im * omegas[f]! * 4.7e-6).toBeCloseTo(-1, 9);
    });
  });

  it('of a semi-inductance: K ω^n at the angle n π/2; with exponent 1 a plain inductance', () => {
    impedanceOf(semiInductance('K', nodes, { kOhmSn: 0.03, exponent: 0.6 })).forEach(({ re, im }, f) => {
      expect(Math.hypot(re, im) / (0.03 * omegas[f]! ** 0.6)).toBeCloseTo(1, 9);
      expect(Math.atan2(im, re)).toBeCloseTo(0.3 * Math.PI, 9);
    });
    impedanceOf(semiInductance('K', nodes, { kOhmSn: 1e-3, exponent: 1 })).forEach(({ im }, f) => {
      expect(im / (omegas[f]! * 1e-3)).toBeCloseTo(1, 9);
    });
  });

  it('of a voice coil: the sum of its parts, with and without semi-inductance', () => {
    const semi = { kOhmSn: 0.03, exponent: 0.6 };
    const whole = impedanceOf(coil('LS', nodes, { reOhm: 5.6, leH: 1e-4, semiInductance: semi }));
    const plain = impedanceOf(coil('LS', nodes, { reOhm: 5.6, leH: 1e-4, semiInductance: null }));
    impedanceOf(semiInductance('K', nodes, semi)).forEach(({ re, im }, f) => {
      expect(plain[f]!.re).toBeCloseTo(5.6, 9);
      expect(plain[f]!.im / (omegas[f]! * 1e-4)).toBeCloseTo(1, 9);
      expect(whole[f]!.re).toBeCloseTo(plain[f]!.re + re, 9);
      expect(whole[f]!.im).toBeCloseTo(plain[f]!.im + im, 8);
    });
  });

  it('of a table: exact on its points, straight on logarithms between them, end values outside', () => {
    const table = {
      frequenciesHz: Float64Array.of(100, 1000, 2000),
      magnitudesOhm: Float64Array.of(8, 32, 16),
      phasesRad: Float64Array.of(0.5, -0.5, 3.5),
    };
    const at = Float64Array.of(10, 100, 100 * Math.sqrt(10), 1000, 2000, 9000).map((f) => 2 * Math.PI * f);
    const z = impedanceOf(tabulatedImpedance('T', nodes, table), at);
    const magnitudes = z.map(({ re, im }) => Math.hypot(re, im));
    [8, 8, 16, 32, 16, 16].forEach((expected, f) => {
      expect(magnitudes[f]!).toBeCloseTo(expected, 9);
    });
    expect(Math.atan2(z[2]!.im, z[2]!.re)).toBeCloseTo(0, 9);
    expect(Math.cos(Math.atan2(z[5]!.im, z[5]!.re) - 3.5)).toBeCloseTo(1, 9);
  });

  it('of a table with one point', () => {
    const one = { frequenciesHz: Float64Array.of(1), magnitudesOhm: Float64Array.of(4), phasesRad: Float64Array.of(0) };
    for (const { re, im } of impedanceOf(tabulatedImpedance('T', nodes, one))) {
      expect(re).toBeCloseTo(4, 12);
      expect(im).toBeCloseTo(0, 12);
    }
  });

  it('below 1 mΩ: counted as 1 mΩ, marked as a short, no longer moved by its value', () => {
    const tiny = resistor('R', nodes, 1e-5);
    expect(impedanceOf(tiny)[0]!.re).toBeCloseTo(1e-3, 15);
    expect(tiny.short).toBe('floored');
    const slope = new Float64Array(1);
    tiny.derivatives!.ohm!.derivative(Float64Array.of(1), slope, new Float64Array(1));
    expect(slope[0]).toBe(0);
    expect(resistor('R', nodes, 1e-3).short).toBeUndefined();
    const link = jumper('J', nodes);
    expect(impedanceOf(link)[0]!.re).toBeCloseTo(1e-3, 15);
    expect(link.short).toBe('link');
  });
});

describe('partBranches', () => {
  it('gives one branch for what is passive, none for speakers and amplifiers', () => {
    const base = { nodes, note: '' };
    const parts: Part[] = [
      { ...base, id: 'R1', kind: 'resistor', ohm: 3, ratedPowerW: 5 },
      { ...base, id: 'C1', kind: 'capacitor', farad: 1e-6, esrOhm: 0.1 },
      { ...base, id: 'L1', kind: 'inductor', henry: 1e-3, dcrOhm: 0.2, coreLossTangent: 0.01 },
      { ...base, id: 'J1', kind: 'jumper' },
      { ...base, id: 'LS1', kind: 'speaker', driverId: 'woofer' },
      { ...base, id: 'V1', kind: 'amplifier' },
    ];
    expect(parts.map((part) => partBranches(part).map((b) => b.id))).toEqual([['R1'], ['C1'], ['L1'], ['J1'], [], []]);
    const at = Float64Array.of(1000);
    const z = parts.slice(0, 3).map((part) => impedanceOf(partBranches(part)[0]!, at)[0]!);
    expect(z[0]!.re).toBeCloseTo(3, 12);
    expect(z[1]!.re).toBeCloseTo(0.1, 9);
    expect(z[2]!.re).toBeCloseTo(0.2 + 1000 * 1e-3 * 0.01, 12);
  });
});
