import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Cabinet,
  type CabinetBrace,
  type CabinetDriver,
  type CabinetPort,
  interferences,
} from '../../../../src/core/build/index.ts';
import { word } from '../../../../src/core/messages/index.ts';
import { cabinet } from '../panels/someCabinet.ts';

const driver = (id: string, upM: number, change: Partial<CabinetDriver> = {}): CabinetDriver => ({
  id,
  chamberId: 'inside',
  at: { wall: 'front', acrossM: 0, upM },
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
  ...change,
});
const tube = (lengthM: number, upM: number, change: Partial<CabinetPort> = {}): CabinetPort => ({
  id: 'tube',
  chamberId: 'inside',
  at: { wall: 'back', acrossM: 0, upM },
  shape: { kind: 'round', boreDiameterM: 0.05, wallM: 0.0025 },
  lengthM,
  ...change,
});
const rib = (change: Partial<CabinetBrace>): CabinetBrace => ({
  id: 'rib',
  chamberId: 'inside',
  axis: 'y',
  atM: 0.191,
  thicknessM: 0.018,
  spanM: {},
  windowsM: [],
  ...change,
});
const found = (parts: Partial<Cabinet>, size: Parameters<typeof cabinet>[0] = {}, webM = 0.01) => {
  const result = interferences(cabinet(size, parts), webM);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  for (const one of result.value) expect(word(one).sentence).not.toContain('no description');
  return result.value.map(({ code, severity, haveM, needM }) => [
    code,
    severity,
    Math.round(haveM * 1e5) / 100,
    Math.round(needM * 1e5) / 100,
  ]);
};

// 250 × 400 × 300 outside, 18 mm: 282 mm from the front to the inner back.
describe('interferences', () => {
  it('has nothing to say of a box where all fits', () => {
    expect(found({ drivers: [driver('woofer', 0.12)], ports: [tube(0.15, 0.33)] })).toEqual([]);
  });

  it('magnet against the back: depth and recess against the room, to the micrometre', () => {
    expect(found({ drivers: [driver('woofer', 0.2, { depthM: 0.277 })] })).toEqual([]);
    expect(found({ drivers: [driver('woofer', 0.2, { depthM: 0.28 })] })).toEqual([
      ['build.magnet-hits-back', 'fault', 282, 285],
    ]);
  });

  it('magnet against a divider behind it', () => {
    const dividers = [
      { id: 'wall', parts: 'inside', axis: 'z' as const, atM: -0.1, thicknessM: 0.018, below: 'rear', above: 'fore' },
    ];
    expect(found({ dividers, drivers: [driver('woofer', 0.2, { chamberId: 'fore', depthM: 0.077 })] })).toEqual([]);
    // The divider stands from z = −100 to −82.
    expect(found({ dividers, drivers: [driver('woofer', 0.2, { chamberId: 'fore' })] }, { depthM: 0.298 })).toEqual([
      ['build.magnet-hits-back', 'fault', 82, 85],
    ]);
    expect(found({ dividers, drivers: [driver('woofer', 0.2, { chamberId: 'rear' })] })).toEqual([
      ['build.chamber-not-behind', 'fault', 0, 0],
    ]);
  });

  it('two cut-outs: overlap, frames, web', () => {
    const pair = (apartM: number) => found({ drivers: [driver('a', 0.11), driver('b', 0.11 + apartM)] });
    expect(pair(0.135)).toEqual([
      ['build.cutouts-overlap', 'fault', -5, 0],
      ['build.drivers-meet', 'fault', -5, 0],
    ]);
    expect(pair(0.16)).toEqual([['build.frames-overlap', 'fault', -6, 0]]);
    expect(pair(0.167)).toEqual([]);
    const tweeter = driver('t', 0.11 + 0.07 + 0.05 + 0.006, {
      cutOutDiameterM: 0.1,
      frameDiameterM: 0.1,
      recessDepthM: 0,
      depthM: 0.02,
      magnetDiameterM: 0.05,
    });
    expect(found({ drivers: [driver('a', 0.11, { frameDiameterM: 0.142, recessDiameterM: 0.142 }), tweeter] })).toEqual(
      [['build.web-too-thin', 'warning', 6, 10]],
    );
  });

  it('a cut-out in the edge, a frame over it, a thin web there', () => {
    expect(found({ drivers: [driver('low', 0.085)] })).toEqual([
      ['build.cutout-in-edge', 'fault', -3, 0],
      ['build.driver-hits-side', 'fault', 67, 70],
    ]);
    expect(found({ drivers: [driver('low', 0.093)] })).toEqual([['build.web-at-edge', 'warning', 5, 10]]);
    expect(found({ drivers: [driver('low', 0.093, { frameDiameterM: 0.19 })] }).map(([code]) => code)).toEqual([
      'build.web-at-edge',
      'build.frame-over-edge',
    ]);
  });

  it('a brace in the way, and a window that lets the driver through', () => {
    const drivers = [driver('woofer', 0.2)];
    expect(found({ drivers, braces: [rib({})] })).toMatchObject([
      ['build.driver-meets-brace', 'fault', expect.anything(), 0],
    ]);
    expect(found({ drivers, braces: [rib({ windowsM: [{ x: [-0.075, 0.075], z: [-0.1, -0.018] }] })] })).toEqual([]);
    expect(found({ drivers, braces: [rib({ windowsM: [{ x: [-0.06, 0.06], z: [-0.1, -0.018] }] })] })).toEqual([
      ['build.driver-meets-brace', 'fault', -10, 0],
    ]);
    expect(found({ drivers, braces: [rib({ spanM: { z: [-0.282, -0.09] } })] })).toEqual([]);
  });

  it('a driver narrows towards its magnet: a brace beside the basket is free where it starts further back', () => {
    // 70 mm radius at the inner face, 45 mm at the magnet 55 mm down; the brace 60 mm above the axis: free from 18 + 10 / 25 × 37 = 32.8 mm.
    const from = (frontM: number) =>
      found({ drivers: [driver('woofer', 0.2)], braces: [rib({ atM: 0.26, spanM: { z: [-0.282, -frontM] } })] });
    expect(from(0.0329)).toEqual([]);
    expect(from(0.0327).map(([code]) => code)).toEqual(['build.driver-meets-brace']);
  });

  it('a port: through the back, choked, near, clear (half the radius and one diameter behind its end)', () => {
    const long = (lengthM: number) => found({ ports: [tube(lengthM, 0.3)] });
    expect(long(0.29)).toEqual([['build.port-through-back', 'fault', 282, 290]]);
    expect(long(0.272)).toEqual([['build.port-choked', 'fault', 10, 12.5]]);
    expect(long(0.2696)).toEqual([['build.port-choked', 'fault', 12.4, 12.5]]);
    expect(long(0.2695)).toEqual([['build.port-end-near', 'warning', 12.5, 50]]);
    expect(long(0.26)).toEqual([['build.port-end-near', 'warning', 22, 50]]);
    expect(long(0.232)).toEqual([]);
  });

  it('a slot on the floor: its own board counts, and the floor is no edge to it', () => {
    const shape = {
      kind: 'slot' as const,
      widthM: 0.214,
      heightM: 0.03,
      wallM: 0.012,
      sharedWalls: ['bottom', 'left', 'right'] as const,
    };
    const slot: CabinetPort = {
      id: 'slot',
      chamberId: 'inside',
      at: { wall: 'front', acrossM: 0, upM: 0.033 },
      shape,
      lengthM: 0.2,
    };
    expect(found({ ports: [slot] })).toEqual([]);
    expect(found({ ports: [slot], braces: [rib({ atM: 0.06 })] })).toEqual([]);
    expect(found({ ports: [slot], braces: [rib({ atM: 0.055 })] })).toEqual([
      ['build.port-meets-brace', 'fault', -5, 0],
    ]);
    // Air leaves upwards alone: 214 × 30 over 214.
    expect(found({ ports: [{ ...slot, lengthM: 0.255 }] })).toEqual([['build.port-choked', 'fault', 27, 30]]);
  });

  it('a port that meets a driver on the facing wall, or its neighbour', () => {
    expect(found({ drivers: [driver('woofer', 0.2)], ports: [tube(0.216, 0.2)] })).toMatchObject([
      ['build.port-meets-driver', 'fault', expect.anything(), 0],
    ]);
    expect(found({ drivers: [driver('woofer', 0.2)], ports: [tube(0.214, 0.2)] })).toEqual([]);
    const beside = tube(0.2, 0.2, { id: 'other', at: { wall: 'back', acrossM: 0.05, upM: 0.2 } });
    expect(found({ ports: [tube(0.2, 0.2), beside] })).toEqual([
      ['build.cutouts-overlap', 'fault', -5, 0],
      ['build.ports-meet', 'fault', -5, 0],
    ]);
  });

  it('mirroring the cabinet mirrors what it says (seed 61)', () => {
    const mm = (from: number, to: number) => fc.integer({ min: from, max: to }).map((m) => m / 1000);
    fc.assert(
      fc.property(
        mm(-60, 60),
        mm(80, 320),
        mm(-60, 60),
        mm(80, 320),
        mm(50, 290),
        mm(20, 350),
        (x, y, portX, portY, lengthM, ribM) => {
          const at = (sign: 1 | -1) =>
            found({
              drivers: [driver('woofer', y, { at: { wall: 'front', acrossM: sign * x, upM: y } })],
              ports: [tube(lengthM, portY, { at: { wall: 'back', acrossM: sign * portX, upM: portY } })],
              braces: [rib({ atM: ribM, spanM: { x: sign > 0 ? [-0.107, 0.02] : [-0.02, 0.107] } })],
            });
          const sorted = (list: ReturnType<typeof at>) => list.map((one) => one.join(' ')).sort();
          expect(sorted(at(1))).toEqual(sorted(at(-1)));
        },
      ),
      { seed: 61, numRuns: 200 },
    );
  });
});
