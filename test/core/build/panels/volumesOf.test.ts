import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proportionsFor, standingWaves, volumesOf } from '../../../../src/core/build/index.ts';
import { cabinet } from './someCabinet.ts';

const driver = {
  id: 'woofer',
  chamberId: 'low',
  at: { wall: 'front' as const, acrossM: 0, upM: 0.12 },
  cutOutDiameterM: 0.14,
  frameDiameterM: 0.165,
  recessDepthM: 0.005,
  recessDiameterM: 0.166,
  screwCircleDiameterM: 0.154,
  screwCount: 6,
  depthM: 0.08,
  magnetDiameterM: 0.09,
  magnetHeightM: 0.03,
  displacedM3: 0.0005,
};
const twoChambers = cabinet(
  {},
  {
    dividers: [{ id: 'shelf', parts: 'inside', axis: 'y', atM: 0.25, thicknessM: 0.018, below: 'low', above: 'high' }],
    drivers: [driver],
    braces: [
      {
        id: 'rib',
        chamberId: 'low',
        axis: 'x',
        atM: -0.009,
        thicknessM: 0.018,
        spanM: { y: [0.018, 0.058] },
        windowsM: [],
      },
    ],
    ports: [
      {
        id: 'tube',
        chamberId: 'low',
        at: { wall: 'back', acrossM: 0, upM: 0.2 },
        shape: { kind: 'round', boreDiameterM: 0.05, wallM: 0.0025 },
        lengthM: 0.118,
      },
    ],
    contents: [{ id: 'board', chamberId: 'high', volumeM3: 0.0002 }],
  },
);

describe('volumesOf', () => {
  it('takes everything out of its own chamber', () => {
    const found = volumesOf(twoChambers);
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    const { chambers, innerM3, dividersM3 } = found.value;
    const [low, high] = chambers;
    expect(low!.chamberId).toBe('low');
    expect(low!.grossM3).toBeCloseTo(0.214 * 0.264 * 0.232, 12);
    expect(low!.bracesM3).toBeCloseTo(0.018 * 0.04 * 0.264, 12);
    expect(low!.portsM3).toBeCloseTo((Math.PI / 4) * 0.055 ** 2 * 0.1, 12);
    expect(low!.netM3).toBeCloseTo(low!.grossM3 - low!.bracesM3 - low!.portsM3 - 0.0005, 12);
    expect(high!.netM3).toBeCloseTo(0.214 * 0.264 * (0.364 - 0.232 - 0.018) - 0.0002, 12);
    expect(low!.grossM3 + high!.grossM3 + dividersM3).toBeCloseTo(innerM3, 12);
  });

  it('names the chamber that is full, the part without a chamber and the divider beside the box', () => {
    const codes = (parts: Parameters<typeof cabinet>[1]): string[] => {
      const found = volumesOf(cabinet({}, parts));
      return found.ok ? [] : found.problems.map(({ code }) => code);
    };
    expect(codes({ contents: [{ id: 'brick', chamberId: 'inside', volumeM3: 0.05 }] })).toEqual(['build.no-air-left']);
    expect(codes({ contents: [{ id: 'brick', chamberId: 'cellar', volumeM3: 0.001 }] })).toEqual([
      'build.unknown-space',
    ]);
    expect(
      codes({
        dividers: [{ id: 'd', parts: 'inside', axis: 'x', atM: 0.12, thicknessM: 0.018, below: 'a', above: 'b' }],
      }),
    ).toEqual(['build.divider-outside']);
    expect(
      codes({
        braces: [{ id: 'b', chamberId: 'inside', axis: 'y', atM: 0.5, thicknessM: 0.018, spanM: {}, windowsM: [] }],
      }),
    ).toEqual(['build.brace-outside']);
  });
});

describe('standingWaves', () => {
  it('are n c / 2d between the inner faces of each chamber', () => {
    const found = standingWaves(cabinet({ measured: 'inside', widthM: 0.343, heightM: 0.686, depthM: 0.25 }), 3, 343);
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    const [{ waves, warnings }] = found.value as [(typeof found.value)[number]];
    expect(waves.map(({ axis }) => axis)).toEqual(['x', 'y', 'z']);
    [500, 1000, 1500].forEach((hz, i) => {
      expect(waves[0]!.frequenciesHz[i]).toBeCloseTo(hz, 9);
      expect(waves[1]!.frequenciesHz[i]).toBeCloseTo(hz / 2, 9);
    });
    expect(waves.every(({ parallel }) => parallel)).toBe(true);
    expect(warnings).toMatchObject([{ axes: ['x', 'y'], whole: 2 }]);
  });

  it('say where faces are not parallel', () => {
    const found = standingWaves(cabinet({ slopeRad: 0.1 }), 1, 343);
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    expect(found.value[0]!.waves.map(({ parallel }) => parallel)).toEqual([true, true, false]);
  });
});

describe('proportionsFor', () => {
  it('gives the volume back, in the ratios (seed 54)', () => {
    const share = fc.double({ min: 0.3, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1, noNaN: true }), share, share, share, (volumeM3, w, h, d) => {
        const { widthM, heightM, depthM } = proportionsFor(volumeM3, [w, h, d]);
        expect((widthM * heightM * depthM) / volumeM3).toBeCloseTo(1, 10);
        expect(heightM / widthM).toBeCloseTo(h / w, 10);
        expect(depthM / widthM).toBeCloseTo(d / w, 10);
      }),
      { seed: 54, numRuns: 100 },
    );
    expect(() => proportionsFor(0, [1, 1, 1])).toThrow(RangeError);
  });
});
