import { describe, expect, it } from 'vitest';
import {
  DISC_EDGE_PEAK_KA,
  discEdgeWave,
  floorBounce,
  pathLengthM,
  pointSourceSum,
  sphereHalfStepHzM,
  sphereHalfStepKa,
  spherePointSource,
  wavenumberPerM,
} from '../../../../src/core/acoustics/index.ts';
import { magnitude } from '../../../../src/core/math/index.ts';

const levelDb = (z: { readonly re: number; readonly im: number }): number => 20 * Math.log10(magnitude(z));

describe('pointSourceSum', () => {
  const k = wavenumberPerM(1500, 343.2);

  it('is exp(−jkr)/r for one source, with the phase of its delay', () => {
    const p = pointSourceSum([{ at: { xM: 0, yM: 0, zM: 0 }, amplitude: 1 }], { xM: 0, yM: 0, zM: 2 }, k);
    expect(magnitude(p)).toBeCloseTo(0.5, 12);
    expect(p.re).toBeCloseTo(0.5 * Math.cos(2 * k), 12);
    expect(p.im).toBeCloseTo(-0.5 * Math.sin(2 * k), 12);
  });

  it('cancels two sources in opposition on their plane of symmetry', () => {
    const sources = [
      { at: { xM: 0, yM: 0.1, zM: 0 }, amplitude: 1 },
      { at: { xM: 0, yM: -0.1, zM: 0 }, amplitude: 1, phaseRad: Math.PI },
    ];
    expect(magnitude(pointSourceSum(sources, { xM: 0.7, yM: 0, zM: 2 }, k))).toBeLessThan(1e-14);
  });

  it('tends to the far-field lobe cos(kd sin θ/2) far away (Linkwitz 1976)', () => {
    const angle = (20 * Math.PI) / 180;
    const r = 2000;
    const observer = { xM: 0, yM: r * Math.sin(angle), zM: r * Math.cos(angle) };
    const sources = [-0.09, 0.09].map((yM) => ({ at: { xM: 0, yM, zM: 0 }, amplitude: 1 }));
    const lobe = Math.abs(Math.cos((k * 0.18 * Math.sin(angle)) / 2));
    expect((magnitude(pointSourceSum(sources, observer, k)) * r) / 2).toBeCloseTo(lobe, 4);
  });

  it('measures paths in space', () => {
    expect(pathLengthM({ xM: 1, yM: 2, zM: 3 }, { xM: 3, yM: 5, zM: 9 })).toBe(7);
  });
});

describe('floorBounce', () => {
  it('is the interference of the source with its image', () => {
    const bounce = floorBounce(0.9, 1.1, 2.5, 343.2);
    expect(bounce.pathDifferenceM).toBeCloseTo(Math.hypot(2.5, 2) - Math.hypot(2.5, 0.2), 12);
    const sources = [0.9, -0.9].map((yM) => ({ at: { xM: 0, yM, zM: 0 }, amplitude: 1 }));
    const listener = { xM: 0, yM: 1.1, zM: 2.5 };
    const sum = (f: number) => magnitude(pointSourceSum(sources, listener, wavenumberPerM(f, 343.2))) * bounce.directM;
    expect(sum(bounce.firstNullHz)).toBeCloseTo(bounce.nullRatio, 10);
    expect(sum(1)).toBeCloseTo(2 - bounce.nullRatio, 3);
    expect(bounce.delayS).toBeCloseTo(bounce.pathDifferenceM / 343.2, 15);
  });
});

describe('spherePointSource', () => {
  it('has the digits of the series at 40 digits: 0.71, 3.04, 4.41, 5.46, 5.83 dB on axis (physics notes, 1)', () => {
    [
      [0.5, 0.7084],
      [1, 3.0359],
      [2, 4.4072],
      [5, 5.4557],
      [10, 5.8321],
    ].forEach(([ka, db]) => {
      expect(Math.abs(levelDb(spherePointSource(ka!, 0)) - db!)).toBeLessThan(5e-5);
    });
  });

  it('tends to 0 dB at low and to 6.02 dB on axis at high frequencies, with a bright spot behind', () => {
    expect(Math.abs(levelDb(spherePointSource(1e-3, 2)))).toBeLessThan(1e-4);
    expect(Math.abs(levelDb(spherePointSource(100, 0)) - 6.0206)).toBeLessThan(0.02);
    const behind = levelDb(spherePointSource(10, Math.PI));
    expect(behind).toBeGreaterThan(levelDb(spherePointSource(10, 2.6)) + 3);
  });

  it('radiates the power that goes into the air at its place: mean square over the sphere = Σ (2n+1)/|h_n′|²/(ka)⁴', () => {
    // Closed form for ka → 0 is 1; here at ka = 1 by the series of the radiation resistance, three terms by hand.
    const ka = 1;
    const steps = 2000;
    let mean = 0;
    for (let i = 0; i < steps; i++) {
      const cosine = -1 + (2 * (i + 0.5)) / steps;
      mean += magnitude(spherePointSource(ka, Math.acos(cosine))) ** 2 / steps;
    }
    // |h_n′(1)|² = 2, 5, 89.0 ... from h0 = j e^−jx/x, h1 = (−1/x + j/x²)e^−jx ...: h0′ = −h1, h1′ = h0 − 2h1, h2′ = h1 − 3h2.
    expect(Math.abs(mean - (1 / 2 + 3 / 5 + 5 / 89))).toBeLessThan(4e-3);
  });

  it('rises half-way at ka = 0.992, 108.4 Hz·m, 6 % below the rule of thumb 115', () => {
    expect(levelDb(spherePointSource(sphereHalfStepKa(), 0))).toBeCloseTo(10 * Math.log10(2), 10);
    expect(Math.abs(sphereHalfStepHzM(343.2) - 108.376)).toBeLessThan(1e-3);
    expect(115 / sphereHalfStepHzM(343.2)).toBeGreaterThan(1.05);
  });
});

describe('discEdgeWave', () => {
  it('goes from 0 dB to +9.54 dB where the detour is half a wavelength', () => {
    expect(levelDb(discEdgeWave(0))).toBeCloseTo(0, 12);
    expect(levelDb(discEdgeWave(DISC_EDGE_PEAK_KA))).toBeCloseTo(20 * Math.log10(3), 12);
  });
});
