import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Cabinet, EDGES, type Panel, panelsOf, volumesOf } from '../../../../src/core/build/index.ts';
import type { Result } from '../../../../src/core/messages/problem.ts';
import { boardVolume, reassemble } from './reassemble.ts';
import { anyCabinet, cabinet, rankedJoints, ringJoints } from './someCabinet.ts';

const value = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const codes = <T>(result: Result<T>): string[] => (result.ok ? [] : result.problems.map(({ code }) => code));
const sizesMm = (panels: readonly Panel[]): Record<string, readonly number[]> =>
  Object.fromEntries(
    panels.map(({ id, lengthM, widthM }) => [id, [lengthM, widthM].map((m) => Math.round(m * 1e6) / 1e3)]),
  );
const panel = (panels: readonly Panel[], id: string): Panel => panels.find((one) => one.id === id)!;

describe('panelsOf', () => {
  it('gives the sizes that a person works out by hand for butt joints', () => {
    // 250 × 400 × 300 outside, 18 mm; top and bottom run through, sides next, front and back between all.
    expect(sizesMm(value(panelsOf(cabinet({}))))).toEqual({
      top: [250, 300],
      bottom: [250, 300],
      left: [364, 300],
      right: [364, 300],
      front: [364, 214],
      back: [364, 214],
    });
  });

  it('the same from the inside', () => {
    const inside = cabinet({ measured: 'inside', widthM: 0.214, heightM: 0.364, depthM: 0.264 });
    expect(sizesMm(value(panelsOf(inside)))).toEqual(sizesMm(value(panelsOf(cabinet({})))));
  });

  it('mitres a ring at 45° and lets the back into a step of 9 mm', () => {
    const joints = ringJoints((wall, ring) =>
      wall === 'front' ? { kind: 'butt', through: 'front' } : { kind: 'rebate', cutInto: ring, depthM: 0.009 },
    );
    const panels = value(panelsOf(cabinet({}, { joints })));
    expect(sizesMm(panels)).toEqual({
      front: [400, 250],
      back: [382, 232],
      left: [400, 282],
      right: [400, 282],
      top: [250, 282],
      bottom: [250, 282],
    });
    const left = panel(panels, 'left');
    expect(left.edges.map(({ meets, bevelRad }) => [meets, Math.round((bevelRad * 180) / Math.PI)])).toEqual([
      ['bottom', 45],
      ['top', 45],
      ['front', 0],
      ['back', 0],
    ]);
    // The step narrows with the mitre: from 364 + 2 · 0 at the inner face to 364 + 2 · 9, 373 in the mean.
    expect(left.rebates).toMatchObject([{ meets: 'back', depthM: 0.009, widthM: 0.018, stopped: false }]);
    expect(left.rebates[0]!.runM).toBeCloseTo(0.373, 9);
    expect(panel(panels, 'back').rebates).toEqual([]);
  });

  it('stops a step where the other board ends before this one', () => {
    const joints = rankedJoints(['left', 'right', 'top', 'bottom', 'front', 'back'], (edge) =>
      edge === 'front-left' ? 0.006 : 0,
    );
    const left = panel(value(panelsOf(cabinet({}, { joints }))), 'left');
    expect(left.rebates).toMatchObject([{ meets: 'front', stopped: true }]);
    expect(left.rebates[0]!.runM).toBeCloseTo(0.364, 9);
  });

  it('a leaning front is longer, and its neighbours are bevelled by the angle', () => {
    const slopeRad = 0.1;
    const panels = value(
      panelsOf(
        cabinet({ slopeRad }, { joints: rankedJoints(['front', 'left', 'right', 'top', 'bottom', 'back'], () => 0) }),
      ),
    );
    const front = panel(panels, 'front');
    // Between the planes of floor and top it is H / cos a long on its outer face; the bevelled ends add t tan a.
    expect(front.lengthM).toBeCloseTo(0.4 / Math.cos(slopeRad) + 0.018 * Math.tan(slopeRad), 9);
    expect(front.edges.find(({ meets }) => meets === 'top')!.bevelRad).toBeCloseTo(-slopeRad, 9);
    expect(front.edges.find(({ meets }) => meets === 'bottom')!.bevelRad).toBeCloseTo(slopeRad, 9);
    expect(panel(panels, 'left').shape).toBe('trapezoid');
    expect(front.shape).toBe('rectangle');
  });

  it('a trapezoid seen from above has trapezoids for top and bottom', () => {
    const panels = value(panelsOf(cabinet({ backWidthM: 0.15 })));
    expect(panel(panels, 'top')).toMatchObject({ shape: 'trapezoid' });
    expect(panel(panels, 'top').outerFace.map(([x, y]) => [x, y].map((m) => Math.round(m * 1e6) / 1e3))).toEqual([
      [0, 0],
      [250, 0],
      [200, 300],
      [50, 300],
    ]);
    const tilt = Math.atan(0.05 / 0.3);
    expect(Math.abs(panel(panels, 'front').edges[0]!.bevelRad)).toBeCloseTo(tilt, 9);
  });

  it('panels add up to the outside less the inside, from the cut list alone, to 1e-9 (seed 51)', () => {
    fc.assert(
      fc.property(anyCabinet, (one) => {
        const panels = value(panelsOf(one));
        const { outerM3, innerM3 } = value(volumesOf(one));
        expect(Math.abs(reassemble(panels) + innerM3 - outerM3) / outerM3).toBeLessThan(1e-9);
        const woodM3 = panels.reduce((sum, p) => sum + p.woodM3, 0);
        expect(Math.abs(woodM3 + innerM3 - outerM3) / outerM3).toBeLessThan(1e-9);
      }),
      { seed: 51, numRuns: 200 },
    );
  });

  it('outer and inner volume agree with the textbook prism: mean of the two trapezoids (seed 52)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        fc.double({ min: 0.6, max: 1.3, noNaN: true }),
        (slopeRad, narrowing) => {
          const leaning = value(volumesOf(cabinet({ slopeRad })));
          expect(leaning.outerM3).toBeCloseTo(0.25 * 0.4 * (0.3 - 0.2 * Math.tan(slopeRad)), 12);
          const tapered = value(volumesOf(cabinet({ backWidthM: 0.25 * narrowing })));
          expect(tapered.outerM3).toBeCloseTo(0.4 * 0.3 * 0.125 * (1 + narrowing), 12);
        },
      ),
      { seed: 52, numRuns: 50 },
    );
  });

  it('from inside sizes the inner volume is the stated one (seed 53)', () => {
    fc.assert(
      fc.property(
        anyCabinet.filter(
          ({ size }) => size.measured === 'inside' && (size.slopeRad === 0 || size.backWidthM === size.widthM),
        ),
        (one) => {
          const { widthM, backWidthM, heightM, depthM, slopeRad } = one.size;
          const statedM3 = ((widthM + backWidthM) / 2) * heightM * (depthM - (heightM / 2) * Math.tan(slopeRad));
          expect(value(volumesOf(one)).innerM3).toBeCloseTo(statedM3, 10);
        },
      ),
      { seed: 53, numRuns: 100 },
    );
  });

  it('refuses a corner that is left open, mitres that end unlike, and steps that cannot be cut', () => {
    const joints = cabinet({}).joints;
    const open: Cabinet['joints'] = {
      ...joints,
      'front-left': { kind: 'butt', through: 'front' },
      'left-top': { kind: 'butt', through: 'left' },
      'front-top': { kind: 'butt', through: 'top' },
    };
    expect(codes(panelsOf(cabinet({}, { joints: open })))).toContain('build.corner-left-open');
    const one: Cabinet['joints'] = {
      ...joints,
      'left-top': { kind: 'mitre' },
      'front-left': { kind: 'butt', through: 'front' },
    };
    expect(codes(panelsOf(cabinet({}, { joints: one })))).toContain('build.mitre-ends-unlike');
    const two: Cabinet['joints'] = { ...joints, 'left-top': { kind: 'mitre' }, 'front-left': { kind: 'mitre' } };
    expect(codes(panelsOf(cabinet({}, { joints: two })))).toContain('build.two-mitres-at-corner');
    const deep = rankedJoints(['top', 'bottom', 'left', 'right', 'front', 'back'], () => 0.018);
    expect(codes(panelsOf(cabinet({}, { joints: deep })))).toEqual(EDGES.map(() => 'build.rebate-too-deep'));
    const sloped = rankedJoints(['top', 'bottom', 'left', 'right', 'front', 'back'], (edge) =>
      edge === 'front-top' ? 0.009 : 0,
    );
    expect(codes(panelsOf(cabinet({ slopeRad: 0.1 }, { joints: sloped })))).toEqual(['build.rebate-on-slope']);
  });

  it('refuses sizes that leave no inside', () => {
    expect(codes(panelsOf(cabinet({ widthM: 0.036 })))).toEqual(['build.no-inside']);
    expect(codes(panelsOf(cabinet({ slopeRad: 0.7 })))).toEqual(['build.no-inside']);
    expect(codes(panelsOf(cabinet({ backWidthM: 0.01, depthM: 0.5 })))).toEqual(['build.no-inside']);
    expect(codes(panelsOf(cabinet({ heightM: Number.NaN })))).toEqual(['build.cabinet-without-size']);
    expect(codes(panelsOf(cabinet({ slopeRad: 1.2 })))).toEqual(['build.front-too-steep']);
  });

  it('lists dividers, braces with windows, and the boards of a slot', () => {
    const panels = value(
      panelsOf(
        cabinet(
          {},
          {
            dividers: [
              { id: 'shelf', parts: 'inside', axis: 'y', atM: 0.2, thicknessM: 0.018, below: 'low', above: 'high' },
            ],
            braces: [
              {
                id: 'brace',
                chamberId: 'low',
                axis: 'y',
                atM: 0.1,
                thicknessM: 0.018,
                spanM: {},
                windowsM: [{ x: [-0.06, 0.06], z: [-0.2, -0.1] }],
              },
            ],
            ports: [
              {
                id: 'slot',
                chamberId: 'low',
                at: { wall: 'front', acrossM: 0, upM: 0.033 },
                shape: {
                  kind: 'slot',
                  widthM: 0.214,
                  heightM: 0.03,
                  wallM: 0.012,
                  sharedWalls: ['bottom', 'left', 'right'],
                },
                lengthM: 0.15,
              },
            ],
          },
        ),
      ),
    );
    expect(sizesMm(panels)).toMatchObject({ shelf: [214, 264], brace: [214, 264], 'slot top': [132, 214] });
    const brace = panel(panels, 'brace');
    expect(brace.woodM3).toBeCloseTo((0.214 * 0.264 - 0.12 * 0.1) * 0.018, 12);
    const [window] = brace.cutOuts;
    expect(window).toMatchObject({ kind: 'window' });
    // 18 mm in from the front, the middle of the window stands at z = −150.
    expect(window!.at[0]).toBeCloseTo(0.107, 9);
    expect(window!.at[1]).toBeCloseTo(0.132, 9);
    expect(boardVolume(panel(panels, 'shelf'))).toBeCloseTo(0.214 * 0.264 * 0.018, 12);
  });
});
