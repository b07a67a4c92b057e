import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { portNearFieldFactor } from '../../../src/core/acoustics/index.ts';
import {
  acousticCentreDepthM,
  type CurveStep,
  type CurveTable,
  changeLevel,
  deriveCurve,
  gateLowestHz,
  joinBand,
  joinNearFar,
  logGrid,
  type MeasuredCurve,
  moveDistance,
  nearFieldLimits,
  nearFieldSum,
  smoothComplex,
  smoothPower,
  splitPhase,
  withBaffleStep,
} from '../../../src/core/measured/index.ts';

const table = (
  fromHz: number,
  toHz: number,
  perOctave: number,
  h: (hz: number) => { m: number; p: number },
): CurveTable => {
  const frequenciesHz = logGrid(fromHz, toHz, perOctave);
  const points = [...frequenciesHz].map(h);
  return {
    frequenciesHz,
    magnitudes: Float64Array.from(points, ({ m }) => m),
    phasesRad: Float64Array.from(points, ({ p }) => p),
  };
};
/** Second-order high-pass at `f0` with Q 0.8, later by `delayS`. */
const highPass =
  (f0: number, delayS = 0) =>
  (hz: number) => {
    const x = hz / f0;
    const [re, im] = [1 - x * x, x / 0.8];
    return { m: (x * x) / Math.hypot(re, im), p: Math.PI - Math.atan2(im, re) - 2 * Math.PI * hz * delayS };
  };

describe('logGrid', () => {
  it('shares its points with every other and stays inside', () => {
    const grid = logGrid(20, 20000, 24);
    expect(grid.length).toBe(239);
    expect(grid[0]).toBeGreaterThanOrEqual(20);
    expect(grid.at(-1)).toBeLessThanOrEqual(20000);
    expect([...logGrid(500, 2000, 12)].every((hz) => [...grid].some((other) => Math.abs(other / hz - 1) < 1e-12))).toBe(
      true,
    );
    expect(() => logGrid(0, 1, 3)).toThrow(RangeError);
  });
});

describe('smoothComplex', () => {
  it('loses what a delay costs if it stays in, and nothing if it is taken out', () => {
    const delayS = 0.2e-3;
    const pure = table(500, 4000, 96, (hz) => ({ m: 1, p: -2 * Math.PI * hz * delayS }));
    const at = [...pure.frequenciesHz].findIndex((hz) => Math.abs(hz - 1000) < 1e-6);
    const out = smoothComplex(pure, 3, delayS);
    expect(out.magnitudes[at]).toBeCloseTo(1, 12);
    expect(out.phasesRad[at]).toBeCloseTo(pure.phasesRad[at]!, 12);
    // A narrow window: sinc of half its width in rad/s times the delay, the window nearly even in f.
    const half = (2 * Math.PI * 1000 * (2 ** (1 / 6) - 2 ** (-1 / 6))) / 2;
    expect(smoothComplex(pure, 3, 0).magnitudes[at]).toBeCloseTo(Math.sin(half * delayS) / (half * delayS), 3);
  });
  it('of a curve without phase is never above the power mean', () => {
    const ripple = table(100, 10000, 48, (hz) => ({ m: 1 + 0.6 * Math.sin(40 * Math.log(hz)), p: 0 }));
    const power = smoothPower(
      ripple.frequenciesHz,
      ripple.magnitudes.map((m) => 20 * Math.log10(m)),
      3,
    );
    smoothComplex(ripple, 3, 0).magnitudes.forEach((m, i) => {
      expect(20 * Math.log10(m)).toBeLessThan(power[i]! + 0.02);
    });
  });
});

describe('moveDistance and acousticCentreDepthM', () => {
  it('undo one another (seed 11)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.double({ min: -0.1, max: 0.3, noNaN: true }),
        (fromM, toM, depthM) => {
          const curve = table(100, 10000, 6, highPass(200));
          const there = moveDistance(curve, fromM, toM, 343.2, depthM);
          const back = moveDistance(there, toM, fromM, 343.2, depthM);
          back.magnitudes.forEach((m, i) => {
            expect(m / curve.magnitudes[i]!).toBeCloseTo(1, 12);
            expect(back.phasesRad[i]!).toBeCloseTo(curve.phasesRad[i]!, 9);
          });
          if (toM > fromM * 1.01) {
            const depth = acousticCentreDepthM(
              { distanceM: fromM, magnitude: curve.magnitudes[5]! },
              { distanceM: toM, magnitude: there.magnitudes[5]! },
            );
            expect(depth).toBeCloseTo(depthM, 8);
          }
        },
      ),
      { seed: 11, numRuns: 50 },
    );
  });
  it('falls by 6.02 dB and turns by the way at twice the distance', () => {
    const curve = table(1000, 1000, 1, () => ({ m: 1, p: 0 }));
    const far = moveDistance(curve, 1, 2, 343.2);
    expect(far.magnitudes[0]).toBeCloseTo(0.5, 12);
    expect(far.phasesRad[0]).toBeCloseTo((-2 * Math.PI * 1000) / 343.2, 12);
    expect(changeLevel(curve, 6.0206).magnitudes[0]).toBeCloseTo(2, 5);
    expect(() => moveDistance(curve, 0.1, 1, 343.2, -0.2)).toThrow(RangeError);
    expect(() => acousticCentreDepthM({ distanceM: 1, magnitude: 1 }, { distanceM: 2, magnitude: 1 })).toThrow(
      RangeError,
    );
  });
});

describe('splitPhase', () => {
  it('finds the delay, leaves nothing of a minimum-phase curve, and leaves an all-pass', () => {
    const delayS = 2.9e-3;
    const split = splitPhase(table(10, 40000, 24, highPass(60, delayS)), { low: 2, high: 0 }, 1 / 343.2);
    expect(split.delayS).toBeCloseTo(delayS, 6);
    for (const rest of split.restRad) expect(Math.abs(rest - split.restRad[0]!)).toBeLessThan(0.01);
    // A first-order all-pass at 30 Hz turns by π in all, nearly all of it below the band that the delay is taken from.
    const turned = splitPhase(
      table(10, 40000, 24, (hz) => {
        const { m, p } = highPass(60, delayS)(hz);
        return { m, p: p - 2 * Math.atan(hz / 30) };
      }),
      { low: 2, high: 0 },
      1 / 343.2,
    );
    const index = (atHz: number) => [...turned.minimum.frequenciesHz].findIndex((hz) => hz >= atHz);
    const turn = turned.restRad[0]! - turned.restRad[index(3000)]!;
    expect(turn).toBeCloseTo(2 * Math.atan(100) - 2 * Math.atan(1 / 3), 1);
    // −dφ/dω of 2 atan(f/f0) is 1/(2π f0) at f0.
    expect(turned.restDelayS[index(30)]! * 2 * Math.PI * 30).toBeCloseTo(1, 1);
  });
});

describe('nearFieldSum', () => {
  const cone = { curve: table(10, 1000, 12, highPass(60)), areaM2: 0.0216, count: 1 };
  it('counts a port by the root of the areas (D. B. Keele 1974)', () => {
    const port = { curve: table(10, 1000, 12, () => ({ m: 2, p: 0.3 })), areaM2: 0.00385, count: 1 };
    const alone = nearFieldSum([cone], 1);
    const both = nearFieldSum([cone, port], 1);
    const factor = Math.sqrt(0.0216 / Math.PI) / 2;
    both.magnitudes.forEach((m, i) => {
      const share = portNearFieldFactor(0.00385, 0.0216) * 2;
      const [cm, cp] = [cone.curve.magnitudes[i]!, cone.curve.phasesRad[i]!];
      const re = cm * Math.cos(cp) + share * Math.cos(0.3);
      const im = cm * Math.sin(cp) + share * Math.sin(0.3);
      expect(m).toBeCloseTo(factor * Math.hypot(re, im), 12);
      expect(alone.magnitudes[i]).toBeCloseTo(factor * cm, 12);
    });
  });
  it('counts equal cones by their number and cancels opposite ones', () => {
    expect(
      nearFieldSum([{ ...cone, count: 2 }], 1).magnitudes[9]! / nearFieldSum([cone], 1).magnitudes[9]!,
    ).toBeCloseTo(2, 12);
    const turned = { ...cone, curve: { ...cone.curve, phasesRad: cone.curve.phasesRad.map((p) => p + Math.PI) } };
    for (const m of nearFieldSum([cone, turned], 1).magnitudes) expect(m).toBeLessThan(1e-15);
    expect(() => nearFieldSum([], 1)).toThrow(RangeError);
  });
});

describe('withBaffleStep', () => {
  it('halves the lows and leaves the highs of a factor that does', () => {
    const near = table(1, 10000, 3, () => ({ m: 1, p: 0 }));
    const re = near.frequenciesHz.map((hz) => (1 + hz / 300) / (2 + hz / 300));
    const out = withBaffleStep(near, { re, im: new Float64Array(re.length) });
    expect(out.magnitudes[0]).toBeCloseTo(0.5, 2);
    expect(out.magnitudes.at(-1)).toBeCloseTo(1, 1);
    expect(() => withBaffleStep(near, { re: [1], im: [0] })).toThrow(RangeError);
  });
});

describe('joinNearFar', () => {
  const truth = highPass(50, 3e-3);
  const far = table(200, 20000, 48, truth);
  const options = { blendHz: 400, perOctave: 24, delayS: [0, 0.01] } as const;
  it('gives back one speaker from its two halves, whatever level, delay and sign the near one has', () => {
    for (const sign of [1, -1])
      for (const [gain, delayS] of [
        [1, 0],
        [14, 1.1e-3],
        [0.02, 2.7e-3],
      ] as const) {
        const near = table(10, 800, 48, (hz) => {
          const { m, p } = truth(hz);
          return { m: m * gain, p: p + 2 * Math.PI * hz * delayS + (sign < 0 ? Math.PI : 0) };
        });
        const joined = joinNearFar(near, far, options);
        expect(joined.gainDb).toBeCloseTo(-20 * Math.log10(gain), 2);
        expect(joined.delayS).toBeCloseTo(delayS, 6);
        expect(joined.reversed).toBe(sign < 0);
        expect(joined.misfit).toBeLessThan(1e-3);
        joined.curve.frequenciesHz.forEach((hz, i) => {
          expect(joined.curve.magnitudes[i]! / truth(hz).m).toBeCloseTo(1, 2);
          const turn = joined.curve.phasesRad[i]! - truth(hz).p;
          expect(Math.abs(turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI)))).toBeLessThan(0.01);
        });
      }
  });
  it('says how badly two curves go together', () => {
    const near = table(10, 800, 48, (hz) => ({ m: (hz / 400) ** 2, p: 0 }));
    expect(joinNearFar(near, far, options).misfit).toBeGreaterThan(0.1);
    expect(() => joinNearFar(table(10, 300, 48, truth), far, options)).toThrow(RangeError);
  });
});

describe('validity', () => {
  it('ends a near field at ka = 1 or a third of the wavelength', () => {
    // 10 920/D in cm for c = 343 m/s, D. B. Keele 1974 (printed: 10 950).
    expect(nearFieldLimits(0.1, 0.1, 343).sourceHz).toBeCloseTo(545.9, 1);
    expect(nearFieldLimits(0.1, 0.6, 343)).toMatchObject({
      cabinetHz: expect.closeTo(343 / 1.8, 9),
      highestHz: expect.closeTo(343 / 1.8, 9),
    });
    expect(gateLowestHz(0.004, false)).toBe(250);
    expect(gateLowestHz(0.004, true)).toBe(500);
    expect(joinBand(600, 250)).toEqual([250, 600]);
    expect(joinBand(400, 250)).toBeNull();
  });
});

describe('deriveCurve', () => {
  const original: MeasuredCurve = {
    quantity: 'response',
    frequenciesHz: [...logGrid(20, 20000, 12)],
    magnitudes: [...logGrid(20, 20000, 12)].map((hz) => 20 * Math.log10(highPass(60)(hz).m)),
    phasesDeg: [...logGrid(20, 20000, 12)].map((hz) => (highPass(60, 1e-3)(hz).p * 180) / Math.PI),
    taken: { voltageV: 2.83, distanceM: 1 },
  };
  /** The farther microphone hears it so much later. */
  const delayS = 1e-3 + 1 / 343.2;
  const steps: CurveStep[] = [
    { kind: 'level', gainDb: 3 },
    { kind: 'distance', toM: 2, centreDepthM: 0, soundSpeedMPerS: 343.2 },
    { kind: 'smooth-complex', fraction: 6, delayS },
    { kind: 'smooth-power', fraction: 3 },
    { kind: 'resample', fromHz: 10, toHz: 30000, perOctave: 6, delayS },
    { kind: 'minimum-phase', tails: { low: 2, high: 0 } },
  ];
  it('keeps the original, and gives it back without steps', () => {
    const copy = structuredClone(original);
    const derived = deriveCurve(original, steps);
    expect(original).toEqual(copy);
    expect(deriveCurve(original, [])).toBe(original);
    expect(derived.taken.distanceM).toBe(2);
    expect(derived.magnitudes.every(Number.isFinite)).toBe(true);
    // +3 dB and 1/r: −3.02 dB in the pass band.
    expect(derived.magnitudes.at(-1)).toBeCloseTo(-3.02, 1);
    expect(derived.phasesDeg!.at(-1)).toBeCloseTo(0, 0);
  });
  it('invents no phase, and refuses what a curve does not have', () => {
    const bare = { ...original, phasesDeg: null };
    expect(deriveCurve(bare, [steps[0]!, steps[3]!]).phasesDeg).toBeNull();
    expect(deriveCurve(bare, [steps[5]!]).phasesDeg).not.toBeNull();
    expect(() => deriveCurve(bare, [steps[2]!])).toThrow(RangeError);
    expect(() =>
      deriveCurve({ ...original, quantity: 'impedance', magnitudes: original.magnitudes.map(() => 8) }, [steps[1]!]),
    ).toThrow(RangeError);
  });
});
