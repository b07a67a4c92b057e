import { describe, expect, it } from 'vitest';
import {
  type ActiveFilter,
  activeFilterProblems,
  filterTransfer,
  highPassTransfer,
  lowPassTransfer,
  respond,
} from '../../../../src/core/circuit/index.ts';

const FILTERS: readonly ActiveFilter[] = (['high-pass', 'low-pass'] as const).flatMap((kind) => [
  ...[1, 2, 3, 4].map((order) => ({ kind, shape: 'butterworth' as const, order, cornerHz: 33 })),
  ...[2, 4].map((order) => ({ kind, shape: 'linkwitz-riley' as const, order, cornerHz: 80 })),
]);
const at = (filter: ActiveFilter, hz: readonly number[]) => {
  const omegas = Float64Array.from(hz, (f) => 2 * Math.PI * f);
  const re = new Float64Array(hz.length);
  const im = new Float64Array(hz.length);
  filterTransfer(filter, omegas, re, im);
  return hz.map((_, i) => ({ re: re[i]!, im: im[i]! }));
};
const db = (z: { re: number; im: number }): number => 20 * Math.log10(Math.hypot(z.re, z.im));

describe('filterTransfer', () => {
  it('is the textbook function of s, by its coefficients', () => {
    const grid = [1, 10, 20, 33, 50, 80, 200, 1000, 20000];
    for (const filter of FILTERS) {
      const shape = { family: filter.shape, order: filter.order };
      const transfer =
        filter.kind === 'high-pass'
          ? highPassTransfer(shape, filter.cornerHz)
          : lowPassTransfer(shape, filter.cornerHz);
      at(filter, grid).forEach((z, i) => {
        const expected = respond(transfer, 2 * Math.PI * grid[i]!);
        const size = Math.hypot(expected.re, expected.im);
        expect(Math.hypot(z.re - expected.re, z.im - expected.im) / size).toBeLessThan(1e-12);
      });
    }
  });
  it('Butterworth follows 1/√(1 + x^±2n), Linkwitz-Riley its square for half the order', () => {
    // S. Butterworth 1930; S. H. Linkwitz 1976 (from memory).
    for (const filter of FILTERS) {
      const { kind, shape, order, cornerHz } = filter;
      for (const hz of [5, 40, 300]) {
        const x = kind === 'high-pass' ? cornerHz / hz : hz / cornerHz;
        const expected = shape === 'butterworth' ? (1 + x ** (2 * order)) ** -0.5 : (1 + x ** order) ** -1;
        const [z] = at(filter, [hz]);
        expect(Math.hypot(z!.re, z!.im) / expected).toBeCloseTo(1, 12);
      }
    }
  });
  it('is 3.01 or 6.02 dB down at the corner and falls 6.02 dB an octave for each order', () => {
    for (const filter of FILTERS) {
      const { kind, shape, order, cornerHz } = filter;
      expect(db(at(filter, [cornerHz])[0]!)).toBeCloseTo(shape === 'butterworth' ? -3.0103 : -6.0206, 3);
      const far = kind === 'high-pass' ? cornerHz / 4096 : cornerHz * 4096;
      const farther = kind === 'high-pass' ? far / 2 : far * 2;
      const [a, b] = at(filter, [far, farther]);
      expect(db(a!) - db(b!)).toBeCloseTo(6.0206 * order, 2);
    }
  });
  it('two Linkwitz-Riley halves of order 4 add up to a flat sum', () => {
    const grid = [10, 60, 80, 130, 1000];
    const high = at({ kind: 'high-pass', shape: 'linkwitz-riley', order: 4, cornerHz: 80 }, grid);
    const low = at({ kind: 'low-pass', shape: 'linkwitz-riley', order: 4, cornerHz: 80 }, grid);
    grid.forEach((_, i) => {
      expect(Math.hypot(high[i]!.re + low[i]!.re, high[i]!.im + low[i]!.im)).toBeCloseTo(1, 12);
    });
  });
  it('stays finite for the oddest corners', () => {
    for (const cornerHz of [1e-300, 1e-9, 1e9, 1e300]) {
      for (const filter of FILTERS) {
        for (const z of at({ ...filter, cornerHz }, [10, 20000])) {
          expect(Number.isFinite(z.re) && Number.isFinite(z.im)).toBe(true);
        }
      }
    }
  });
});

describe('activeFilterProblems', () => {
  it('lets the six shapes through and names what else is wrong', () => {
    for (const filter of FILTERS) expect(activeFilterProblems(filter)).toEqual([]);
    const odd = { kind: 'high-pass', shape: 'linkwitz-riley', order: 3, cornerHz: 0 } as const;
    expect(activeFilterProblems(odd).map(({ code }) => code)).toEqual([
      'circuit.section-value',
      'circuit.filter-order',
    ]);
    expect(activeFilterProblems({ ...odd, shape: 'butterworth', order: 5, cornerHz: 30 })).toHaveLength(1);
  });
});
