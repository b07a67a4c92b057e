import { describe, expect, it } from 'vitest';
import {
  angularFrequency,
  bandPassSection,
  bandPassTransfer,
  type FilterShape,
  filterSection,
  firstOrderThreeWay,
  firstOrderTwoWay,
  highPassTransfer,
  inputImpedance,
  ladderElements,
  lowPassTransfer,
  prototypePolynomial,
  respond,
  sumOf,
} from '../../../../src/core/circuit/index.ts';
import { logOmegas } from '../randomCircuit.ts';
import { succeeded } from '../solved.ts';
import { sectionTransfer } from './sectionTransfer.ts';

const SHAPES: FilterShape[] = [
  ...[1, 2, 3, 4, 5, 8].map((order): FilterShape => ({ family: 'butterworth', order })),
  ...[2, 4, 8].map((order): FilterShape => ({ family: 'linkwitz-riley', order })),
  ...[1, 2, 3, 4].flatMap((order): FilterShape[] =>
    (['delay', 'phase', '3dB'] as const).map((normalisation) => ({ family: 'bessel', order, normalisation })),
  ),
];
const named = SHAPES.map((shape) => [Object.values(shape).join(' '), shape] as const);
const omegas = logOmegas(20, 20000, 25);
const [CORNER, LOAD] = [1500, 6.5];

/** Greatest difference between a section solved as a circuit and its rational function. */
function difference(section: Parameters<typeof sectionTransfer>[0], transfer: Parameters<typeof respond>[0]): number {
  const out = sectionTransfer(section, LOAD, omegas).potential('@out');
  return Math.max(
    ...Array.from(omegas, (omega, f) => {
      const expected = respond(transfer, omega);
      return Math.hypot(out.re[f]! - expected.re, out.im[f]! - expected.im);
    }),
  );
}

describe.each(named)('%s', (_name, shape) => {
  it('solved as a circuit, low-pass, high-pass and band-pass are the rational functions', () => {
    // 1e-9: a ladder of eight elements loses some digits in the continued fraction.
    expect(
      difference(succeeded(filterSection('low-pass', shape, CORNER, LOAD)), lowPassTransfer(shape, CORNER)),
    ).toBeLessThan(1e-9);
    expect(
      difference(succeeded(filterSection('high-pass', shape, CORNER, LOAD)), highPassTransfer(shape, CORNER)),
    ).toBeLessThan(1e-9);
    expect(
      difference(succeeded(bandPassSection(shape, 300, 2500, LOAD)), bandPassTransfer(shape, 300, 2500)),
    ).toBeLessThan(1e-9);
  });

  it('band-pass is as far down at both corners as the low-pass at its own', () => {
    const at = (transfer: Parameters<typeof respond>[0], hz: number): number => {
      const { re, im } = respond(transfer, angularFrequency(hz));
      return Math.hypot(re, im);
    };
    const corner = at(lowPassTransfer(shape, CORNER), CORNER);
    const band = bandPassTransfer(shape, 300, 2500);
    expect(at(band, 300)).toBeCloseTo(corner, 9);
    expect(at(band, 2500)).toBeCloseTo(corner, 9);
    expect(at(band, Math.sqrt(300 * 2500))).toBeCloseTo(1, 9);
  });
});

describe('filter tables', () => {
  // A. I. Zverev, Handbook of Filter Synthesis, 1967, tables for a source without resistance (from memory, four digits).
  it.each([
    [3, [1.5, 1.3333, 0.5]],
    [4, [1.5307, 1.5772, 1.0824, 0.3827]],
    [5, [1.5451, 1.6944, 1.382, 0.8944, 0.309]],
  ])('Butterworth of order %d', (order, printed) => {
    const elements = ladderElements(prototypePolynomial({ family: 'butterworth', order }), 1, 1);
    elements.forEach(({ value }, i) => {
      expect(Math.abs(value - printed[i]!)).toBeLessThan(6e-5);
    });
  });

  it('refuses polynomials that no passive ladder has', () => {
    expect(() => ladderElements([1, -1, 1], 1, 1)).toThrow(/passive ladder/);
  });
});

describe('parts of a section', () => {
  it('go from @in over inner nodes to @out, with names of their own', () => {
    const low = succeeded(filterSection('low-pass', { family: 'butterworth', order: 3 }, CORNER, LOAD));
    expect(low.parts.map(({ id, nodes }) => [id, ...nodes])).toEqual([
      ['L1', '@in', '@1'],
      ['C1', '@1', '0'],
      ['L2', '@1', '@out'],
    ]);
    const high = succeeded(filterSection('high-pass', { family: 'linkwitz-riley', order: 4 }, CORNER, LOAD));
    expect(high.parts.map(({ id, nodes }) => [id, ...nodes])).toEqual([
      ['C1', '@in', '@1'],
      ['L1', '@1', '0'],
      ['C2', '@1', '@out'],
      ['L2', '@out', '0'],
    ]);
    const band = succeeded(bandPassSection({ family: 'butterworth', order: 2 }, 300, 2500, LOAD));
    expect(band.parts.map(({ id, nodes }) => [id, ...nodes])).toEqual([
      ['C1', '@in', '@1'],
      ['L1', '@1', '@out'],
      ['C2', '@out', '0'],
      ['L2', '@out', '0'],
    ]);
    for (const section of [low, high, band]) {
      expect(section.source).toMatch(/19\d\d/);
      expect(section.assumes.length).toBeGreaterThan(40);
    }
  });

  it('names values and orders that make no section', () => {
    const problemsOf = (result: ReturnType<typeof filterSection>) =>
      result.ok ? [] : result.problems.map((p) => [p.code, p.place.field]);
    const shape: FilterShape = { family: 'butterworth', order: 2 };
    expect(problemsOf(filterSection('low-pass', shape, 0, Number.NaN))).toEqual([
      ['circuit.section-value', 'cornerHz'],
      ['circuit.section-value', 'loadOhm'],
    ]);
    for (const order of [0, 2.5, 9]) {
      expect(problemsOf(filterSection('low-pass', { family: 'bessel', order, normalisation: 'delay' }, 1, 1))).toEqual([
        ['circuit.section-order', 'order'],
      ]);
    }
    expect(problemsOf(filterSection('low-pass', { family: 'linkwitz-riley', order: 3 }, 1, 1))).toEqual([
      ['circuit.section-order', 'order'],
    ]);
    expect(problemsOf(bandPassSection(shape, 500, 400, 8))).toEqual([['circuit.section-band', 'highHz']]);
    expect(() => prototypePolynomial({ family: 'linkwitz-riley', order: 3 })).toThrow(/even/);
    expect(() => prototypePolynomial({ family: 'butterworth', order: 0 })).toThrow(/order 0/);
    expect(() => prototypePolynomial({ family: 'bessel', order: 1.5, normalisation: 'delay' })).toThrow(/order 1.5/);
  });
});

describe('sums of crossovers', () => {
  it('first order: both sections solved as circuits add up to the input', () => {
    const { low, high } = succeeded(firstOrderTwoWay({ cornerHz: 1200, lowOhm: LOAD, highOhm: LOAD }));
    const a = sectionTransfer(low, LOAD, omegas).potential('@out');
    const b = sectionTransfer(high, LOAD, omegas).potential('@out');
    for (let f = 0; f < omegas.length; f++) {
      expect(a.re[f]! + b.re[f]!).toBeCloseTo(1, 12);
      expect(a.im[f]! + b.im[f]!).toBeCloseTo(0, 12);
    }
  });

  it.each([2, 4, 8])('Linkwitz-Riley of order %d adds up to an all-pass', (order) => {
    const shape: FilterShape = { family: 'linkwitz-riley', order };
    const sum = sumOf(lowPassTransfer(shape, CORNER), highPassTransfer(shape, CORNER), order === 2 ? -1 : 1);
    for (const omega of omegas) {
      const { re, im } = respond(sum, omega);
      expect(Math.hypot(re, im)).toBeCloseTo(1, 12);
    }
  });

  it('first-order three-way: the middle way has real poles at both corners, all loads see one resistance each', () => {
    const ways = succeeded(firstOrderThreeWay({ lowHz: 350, highHz: 2800, lowOhm: LOAD, midOhm: LOAD, highOhm: LOAD }));
    const mid = sectionTransfer(ways.mid, LOAD, omegas).potential('@out');
    omegas.forEach((omega, f) => {
      // s (wl + wh) / ((s + wl) (s + wh))
      const [l, h] = [2 * Math.PI * 350, 2 * Math.PI * 2800];
      const expected = respond({ numerator: [0, l + h], denominator: [l * h, l + h, 1] }, omega);
      expect(mid.re[f]!).toBeCloseTo(expected.re, 12);
      expect(mid.im[f]!).toBeCloseTo(expected.im, 12);
    });
    const at = Float64Array.of(2 * Math.PI * 350);
    const low = inputImpedance(sectionTransfer(ways.low, LOAD, at), 'V1');
    expect(low.im[0]! / low.re[0]!).toBeCloseTo(1, 12);
    const bad = firstOrderThreeWay({ lowHz: 3000, highHz: 300, lowOhm: 8, midOhm: 8, highOhm: -1 });
    expect(bad.ok ? [] : bad.problems.map((p) => p.place.field)).toEqual(['highOhm']);
    const swapped = firstOrderThreeWay({ lowHz: 3000, highHz: 300, lowOhm: 8, midOhm: 8, highOhm: 8 });
    expect(swapped.ok ? [] : swapped.problems.map((p) => p.code)).toEqual(['circuit.section-band']);
    const noLoad = firstOrderTwoWay({ cornerHz: 1000, lowOhm: 8, highOhm: 0 });
    expect(noLoad.ok).toBe(false);
  });
});
