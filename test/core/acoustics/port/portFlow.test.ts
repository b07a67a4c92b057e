import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airSpeedVerdict,
  PORT_THRESHOLDS,
  portFlow,
  speedForLayerReynolds,
} from '../../../../src/core/acoustics/index.ts';
import { AIR } from '../sweep.ts';

const air = { ...AIR, viscosityPaS: 1.81e-5 };

describe('portFlow', () => {
  it('gives the worked chain for 15.6 m/s peak at 30 Hz in 80 mm (physics notes, PORT-04)', () => {
    const state = portFlow(15.5772693, 30, 0.04, air);
    expect(state.strokePeakM).toBeCloseTo(0.08264, 6);
    expect(state.mach).toBeCloseTo(0.045388, 6);
    expect(Math.abs(state.reynolds / 82902 - 1)).toBeLessThan(1e-5);
    expect(state.strouhal).toBeCloseTo(0.484027, 6);
    expect(state.stokesNumber).toBeCloseTo(100.1584, 4);
    expect(state.layerReynolds).toBeCloseTo(413.8546, 3);
  });

  it('hangs together: Re = 2 St⁻¹ Sk² · ..., layer Re = Re/(2 Sk), stroke = a/St (seed 62)', () => {
    const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(number(0.1, 40), number(10, 200), number(0.01, 0.1), (speed, f, radius) => {
        const state = portFlow(speed, f, radius, air);
        expect(state.reynolds / (2 * state.stokesNumber) / state.layerReynolds).toBeCloseTo(1, 12);
        expect((state.strokePeakM * state.strouhal) / radius).toBeCloseTo(1, 12);
        // ω a²/ν = 2 (a/δ)²
        expect((state.reynolds * state.strouhal) / (4 * state.stokesNumber ** 2)).toBeCloseTo(1, 12);
      }),
      { seed: 62 },
    );
  });

  it('turns the published layer numbers into 3.5, 8.1 and 35 m/s at 35 Hz (physics notes, 4.6)', () => {
    const { layerInstability, layerGrowth, layerTurbulence } = PORT_THRESHOLDS;
    [3.456, 8.131, 34.557].forEach((speed, i) => {
      const reynolds = [layerInstability, layerGrowth, layerTurbulence][i]!.value;
      expect(speedForLayerReynolds(reynolds, 35, air)).toBeCloseTo(speed, 3);
      expect(portFlow(speed, 35, 0.03, air).layerReynolds / reynolds).toBeCloseTo(1, 3);
    });
  });
});

describe('airSpeedVerdict', () => {
  const verdict = (speedPeakMPerS: number, f: number, edgeRadiusM: number, radiusM = 0.04) =>
    airSpeedVerdict({ speedPeakMPerS, ...portFlow(speedPeakMPerS, f, radiusM, air) }, { radiusM, edgeRadiusM });

  it('judges a sharp tube by speed: quiet below 10 m/s, audible above 5 % of the speed of sound', () => {
    expect(verdict(9.9, 30, 0).concern).toBe('quiet');
    expect(verdict(10.1, 30, 0)).toMatchObject({
      concern: 'watch',
      reasons: [{ measure: 'speed', threshold: 10 }, {}],
    });
    expect(verdict(17.1, 30, 0).concern).toBe('watch');
    expect(verdict(17.2, 30, 0)).toMatchObject({ concern: 'audible', reasons: [{ measure: 'mach' }, {}] });
    expect(verdict(17.2, 30, 0).reasons.map(({ measure }) => measure)).toEqual(['mach', 'speed']);
  });

  it('lets a flared tube have 15 and 20 m/s, but counts the stroke over its edge', () => {
    // At 60 Hz the stroke of 16 m/s is 42 mm.
    expect(verdict(16, 60, 0.1, 0.04)).toMatchObject({
      concern: 'watch',
      reasons: [{ measure: 'speed', threshold: 15 }, {}],
    });
    expect(verdict(14, 60, 0.1, 0.04).concern).toBe('quiet');
    expect(verdict(20.1, 60, 0.2, 0.04).concern).toBe('audible');
    expect(verdict(14, 60, 0.03, 0.04)).toMatchObject({
      concern: 'audible',
      reasons: [{ measure: 'stroke', threshold: 1 }, {}],
    });
    expect(verdict(14, 60, 0.06, 0.04)).toMatchObject({
      concern: 'watch',
      reasons: [{ measure: 'stroke', threshold: 0.5 }, {}],
    });
  });

  it('does not call a long stroke audible while the layer is tame', () => {
    // 3 m/s at 30 Hz: stroke 16 mm over an edge of 5 mm, layer Reynolds 80.
    expect(verdict(3, 30, 0.005)).toMatchObject({
      concern: 'watch',
      reasons: [{ measure: 'stroke', concern: 'watch' }, {}, {}],
    });
  });

  it('never eases with speed (seed 63)', () => {
    const rank = { quiet: 0, watch: 1, audible: 2 };
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 30, noNaN: true }),
        fc.double({ min: 15, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (speed, f, edge) => {
          expect(rank[verdict(1.1 * speed, f, edge).concern]).toBeGreaterThanOrEqual(
            rank[verdict(speed, f, edge).concern],
          );
        },
      ),
      { seed: 63 },
    );
  });
});
