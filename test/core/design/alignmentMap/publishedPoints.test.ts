import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  lossesAtTuning,
  type PublishedFamily,
  type PublishedPoints,
  publishedPoints,
  ventedFigures,
} from '../../../../src/core/design/alignmentMap/index.ts';
import { chebyshevRipple, flatVentedAlignment, ventedC4 } from '../../../../src/core/design/alignments/index.ts';
import { word } from '../../../../src/core/messages/index.ts';

const small = { fsHz: 33, qts: 0.367346939, vasM3: 0.057 };
const of = (found: PublishedPoints, family: PublishedFamily) => found.points.find((point) => point.family === family);
const reason = (found: PublishedPoints, family: PublishedFamily) =>
  found.absent.find((one) => one.family === family)?.reason.code;

describe('publishedPoints', () => {
  it('holds the worked example within chart reading: 37 L, 35 Hz, f3 38 Hz (Small 1973, part III, from memory)', () => {
    const qb3 = of(publishedPoints({ driver: small, ql: 7, wishedQtcs: [] }), 'QB3')!;
    expect(Math.abs(qb3.volumeM3 / 0.037 - 1)).toBeLessThan(0.03);
    expect(Math.abs(qb3.tuningHz! / 35 - 1)).toBeLessThan(0.03);
    expect(Math.abs(qb3.f3Hz / 38 - 1)).toBeLessThan(0.03);
    expect(qb3.rippleDb).toBeLessThan(1e-6);
  });

  it('lists each family once, as a point or with its reason in a sentence, for every driver (seed 105)', () => {
    const families = ['B2', 'C2', 'BL2', 'Qtc', 'B4', 'QB3', 'C4', 'SC4', 'BL4', 'BB4', 'SBB4'];
    const wild = fc.oneof(
      { weight: 4, arbitrary: fc.double({ min: -2, max: 2, noNaN: true }).map((e) => 10 ** e) },
      { weight: 1, arbitrary: fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-300, 1e300) },
    );
    const usual = fc.double({ min: 0.15, max: 1.2, noNaN: true });
    let points = 0;
    fc.assert(
      fc.property(
        wild,
        fc.oneof(usual, wild),
        wild,
        fc.oneof(wild, fc.constantFrom(null, 7)),
        wild,
        (f, q, v, ql, qtc) => {
          const found = publishedPoints({ driver: { fsHz: f, qts: q, vasM3: v }, ql, wishedQtcs: [qtc] });
          const named = [...found.points, ...found.absent].map(({ family }) => family).sort();
          expect(named).toEqual([...families].sort());
          for (const { volumeM3, tuningHz, f3Hz, rippleDb, source } of found.points) {
            points++;
            for (const value of [volumeM3, tuningHz ?? 1, f3Hz]) expect(value > 0 && Number.isFinite(value)).toBe(true);
            expect(rippleDb >= 0 && Number.isFinite(rippleDb)).toBe(true);
            expect(source.length).toBeGreaterThan(5);
          }
          for (const { reason: why } of found.absent) {
            const { sentence, remedy } = word(why);
            expect(`${sentence} ${remedy}`).not.toMatch(/NaN|undefined|Infinity|no description/);
          }
        },
      ),
      { seed: 105, numRuns: 800 },
    );
    expect(points).toBeGreaterThan(500);
  });

  it('says which side of B4 a family lies on, and marks B4 and Bessel only near the one Q that they ask for', () => {
    const low = publishedPoints({ driver: { ...small, qts: 0.3 }, ql: 7, wishedQtcs: [1] });
    expect(low.points.map(({ family }) => family)).toEqual(['BL2', 'B2', 'C2', 'Qtc', 'QB3', 'SC4', 'SBB4']);
    expect(reason(low, 'B4')).toBe('design.alignment-one-q');
    expect(reason(low, 'C4')).toBe('design.alignment-above');
    const middle = publishedPoints({ driver: { ...small, qts: 0.41 }, ql: 7, wishedQtcs: [1] });
    expect(of(middle, 'B4')!.tuningHz).toBeCloseTo(33, 9);
    // The driver's own Q in B4's box: not quite flat.
    expect(of(middle, 'B4')!.rippleDb).toBeGreaterThan(0.01);
    const high = publishedPoints({ driver: { ...small, qts: 0.6 }, ql: 7, wishedQtcs: [0.5] });
    const k = ventedC4(0.6, 7)!.k;
    expect(of(high, 'C4')!.rippleDb).toBeCloseTo(20 * Math.log10(chebyshevRipple(k)), 8);
    expect(reason(high, 'Qtc')).toBe('acoustics.qtc-not-above-qts');
    expect(reason(high, 'QB3')).toBe('design.alignment-below');
    expect(reason(publishedPoints({ driver: small, ql: 1, wishedQtcs: [] }), 'QB3')).toBe('design.alignment-leak');
    expect(of(publishedPoints({ driver: { ...small, qts: 0.33 }, ql: 7, wishedQtcs: [] }), 'BL4')).toBeDefined();
  });

  it('agrees with the flat alignment and with the map’s own figures at the point', () => {
    for (const qts of [0.25, 0.35, 0.5]) {
      const driver = { ...small, qts };
      const flat = flatVentedAlignment(driver, 7);
      if (!flat.ok) throw new Error('no flat box');
      const point = of(publishedPoints({ driver, ql: 7, wishedQtcs: [] }), flat.value.kind)!;
      expect(point.volumeM3).toBeCloseTo(flat.value.volumeM3, 12);
      expect(point.f3Hz / flat.value.f3Hz).toBeCloseTo(1, 8);
      const losses = lossesAtTuning({ leak: { q: 7, atHz: null }, absorption: null, port: null }, point.tuningHz!);
      const box = { h: point.tuningHz! / 33, alpha: driver.vasM3 / point.volumeM3, qt: qts, losses };
      expect(ventedFigures(box, 1)!.rippleDb).toBeCloseTo(point.rippleDb, 9);
    }
  });

  it('C2 swells by the 0.5 dB that it names', () => {
    const c2 = of(publishedPoints({ driver: small, ql: null, wishedQtcs: [] }), 'C2')!;
    expect(c2.rippleDb).toBeCloseTo(0.5, 10);
    expect(c2.qtc!).toBeCloseTo(0.8637, 4);
  });
});

describe('flatVentedAlignment', () => {
  it('refuses a leak so strong that the equations have no solution, instead of throwing', () => {
    for (const ql of [0.01, 0.3, 0.5, 0.7, 1, 1.31, 1.35, 1.4, 2]) {
      for (let qts = 0.1; qts < 3; qts *= 1.02) {
        const found = flatVentedAlignment({ fsHz: 30, qts, vasM3: 0.05 }, ql);
        if (found.ok) expect(found.value.volumeM3 > 0 && Number.isFinite(found.value.f3Hz)).toBe(true);
        else expect(word(found.problems[0]!).sentence).toMatch(/[Nn]o flat vented/);
      }
    }
  });
});
