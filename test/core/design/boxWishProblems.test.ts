import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BoxWish, boxWishProblems, portQuarterWaveHz } from '../../../src/core/design/boxWishProblems.ts';
import { findRoot } from '../../../src/core/math/index.ts';
import { word } from '../../../src/core/messages/index.ts';

const C = 343.2;
const port = { shape: { kind: 'round', diameterM: 0.07 }, innerEnd: 'free', outerEnd: 'flanged', count: 1 } as const;
const vented = (changes: Partial<Extract<BoxWish, { kind: 'vented' }>> = {}): BoxWish => ({
  kind: 'vented',
  volumeM3: 0.04,
  tuningHz: 38,
  port,
  insideM: 0.25,
  ...changes,
});
const codes = (wish: BoxWish) => boxWishProblems(wish, C).map(({ code }) => code);

describe('boxWishProblems', () => {
  it('lets a wish that can come true pass', () => {
    expect(codes(vented())).toEqual([]);
    expect(codes({ kind: 'sealed', driver: { fsHz: 30, qts: 0.4, vasM3: 0.05 }, qtc: 0.7 })).toEqual([]);
  });

  it('says what stands against each impossible one, with its number and a remedy', () => {
    expect(codes({ kind: 'sealed', driver: { fsHz: 30, qts: 0.8, vasM3: 0.05 }, qtc: 0.7 })).toEqual([
      'acoustics.qtc-not-above-qts',
    ]);
    expect(codes(vented({ volumeM3: -0.002 }))).toEqual(['design.no-air-left']);
    expect(codes(vented({ tuningHz: 0 }))).toEqual(['acoustics.no-tuning-asked']);
    expect(codes(vented({ tuningHz: 300 }))).toEqual(['acoustics.port-too-wide']);
    expect(codes(vented({ tuningHz: 22 }))).toEqual(['design.port-longer-than-box']);
    const pipe = boxWishProblems(vented({ volumeM3: 0.002, tuningHz: 38, insideM: null }), C);
    expect(pipe.map(({ code }) => code)).toEqual(['design.tuning-above-pipe']);
    expect(word(pipe[0]!).sentence).toMatch(/38 Hz would need a port of \d+ mm.*quarter of a wave/);
    expect(word(boxWishProblems(vented({ volumeM3: -0.002 }), C)[0]!).sentence).toMatch(/−2 L of air/);
  });

  it('draws the line at a quarter wave: a pipe on any volume resonates below it (transcendental equation solved)', () => {
    const lengthM = 0.5;
    const sectionM2 = 0.0038;
    for (const volumeM3 of [1e-7, 1e-4, 1e-3, 1e-2, 0.1]) {
      const mismatch = (kl: number) => sectionM2 * Math.cos(kl) - (kl / lengthM) * volumeM3 * Math.sin(kl);
      const { x } = findRoot(mismatch, 1e-9, Math.PI / 2, 1e-12);
      const tuningHz = (x * C) / (2 * Math.PI * lengthM);
      expect(tuningHz).toBeLessThan(portQuarterWaveHz(lengthM, C));
      if (volumeM3 === 1e-7) expect(tuningHz / portQuarterWaveHz(lengthM, C)).toBeGreaterThan(0.999);
    }
  });

  it('never throws and never says NaN (seed 107)', () => {
    const wild = fc.oneof(
      fc.double({ min: -6, max: 4, noNaN: true }).map((e) => 10 ** e),
      fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-300, 1e300),
    );
    const wish = fc.oneof(
      fc.record({
        kind: fc.constant('sealed' as const),
        driver: fc.record({ fsHz: wild, qts: wild, vasM3: wild }),
        qtc: wild,
      }),
      fc.record({
        kind: fc.constant('vented' as const),
        volumeM3: wild,
        tuningHz: wild,
        insideM: fc.oneof(wild, fc.constant(null)),
        port: wild.map((diameterM) => ({ ...port, shape: { kind: 'round' as const, diameterM } })),
      }),
    );
    fc.assert(
      fc.property(wish, (asked) => {
        for (const problem of boxWishProblems(asked, C)) {
          const { sentence, remedy } = word(problem);
          expect(`${sentence} ${remedy}`).not.toMatch(/NaN|undefined|Infinity|no description/);
        }
      }),
      { seed: 107, numRuns: 1500 },
    );
  });
});
