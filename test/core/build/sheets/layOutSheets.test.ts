import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type CuttingOptions,
  layOutSheets,
  type SheetLayout,
  type SheetPart,
  type StockSheet,
} from '../../../../src/core/build/index.ts';
import { loadCases, OWN_CASES } from '../../../references/harness.ts';
import { layoutFaults } from './layoutFaults.ts';
import { leastSheets } from './leastSheets.ts';
import { plainShelves } from './plainShelves.ts';

const options = (kerfM: number, trimM = 0, effort = 0): CuttingOptions => ({ kerfM, trimM, seed: 1, effort });
const part = (id: string, lengthM: number, widthM: number, count = 1, turns = false): SheetPart => ({
  id,
  lengthM,
  widthM,
  count,
  grain: turns ? 'any' : 'along-length',
  allowRotation: turns,
});
const board = (lengthM: number, widthM: number, count: StockSheet['count'] = 'unlimited') => ({
  lengthM,
  widthM,
  count,
});
const solved = (parts: readonly SheetPart[], stock: readonly StockSheet[], by: CuttingOptions): SheetLayout => {
  const found = layOutSheets(parts, stock, by);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  expect(layoutFaults(found.value, parts, stock, by)).toEqual([]);
  return found.value;
};

const mm = (from: number, to: number) => fc.integer({ min: from, max: to }).map((size) => size / 1000);
const somePart = fc.record({
  lengthM: mm(40, 1200),
  widthM: mm(40, 700),
  count: fc.integer({ min: 1, max: 4 }),
  turns: fc.boolean(),
});
const someParts = (most: number) =>
  fc
    .array(somePart, { minLength: 1, maxLength: most })
    .map((list) => list.map(({ lengthM, widthM, count, turns }, i) => part(`p${i}`, lengthM, widthM, count, turns)));

const sheetCases = loadCases(OWN_CASES).filter(({ family, inputs }) => family === 'cutting' && 'parts_mm' in inputs);

describe('layOutSheets', () => {
  it.each(sheetCases)('reaches the optimum of $id by a layout that can be sawn', ({ inputs, expected }) => {
    const [lengthMm, widthMm] = inputs.sheet_mm as number[];
    const parts = (inputs.parts_mm as number[][]).map(([l, w], i) => part(`p${i}`, l! / 1000, w! / 1000));
    const by = options((inputs.kerf_mm as number) / 1000, 0, 4000);
    const layout = solved(parts, [board(lengthMm! / 1000, widthMm! / 1000)], by);
    expect(layout.sheets.length).toBe((expected as { optimum_sheets: number }).optimum_sheets);
    expect(layout.provedOptimal).toBe(true);
  });

  it('never overlaps, never leaves the board, can be sawn as listed, with kerf, trim and turning (seed 41)', () => {
    fc.assert(
      fc.property(someParts(9), mm(0, 6), mm(0, 15), fc.constantFrom(0, 0, 0, 10), (parts, kerfM, trimM, effort) => {
        const layout = solved(parts, [board(2.44, 1.22)], options(kerfM, trimM, effort));
        expect(layout.sheets.length).toBeGreaterThanOrEqual(layout.lowerBound);
        const woodM2 = parts.reduce((sum, { lengthM, widthM, count }) => sum + lengthM * widthM * count, 0);
        expect(layout.wasteFraction).toBeCloseTo(1 - woodM2 / (layout.sheets.length * 2.44 * 1.22), 9);
      }),
      { seed: 41, numRuns: 80 },
    );
  });

  it('needs no more sheets than plain shelves, and then leaves no smaller off-cut (seed 42)', () => {
    let beaten = 0;
    fc.assert(
      fc.property(someParts(12), mm(0, 5), (parts, kerfM) => {
        const layout = solved(parts, [board(2.44, 1.22)], options(kerfM, 0.01));
        const shelves = plainShelves(parts, board(2.44, 1.22), kerfM, 0.01);
        expect(layout.sheets.length).toBeLessThanOrEqual(shelves.sheets);
        if (layout.sheets.length < shelves.sheets) beaten += 1;
        else expect(layout.largestOffCutM2).toBeGreaterThanOrEqual(shelves.largestRestM2 * (1 - 1e-9));
      }),
      { seed: 42, numRuns: 150 },
    );
    expect(beaten).toBeGreaterThan(10);
  });

  it('uses as few sheets as trying every cut does, for up to five parts (seed 43)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 2, max: 9 }), fc.integer({ min: 2, max: 9 })), {
          minLength: 1,
          maxLength: 5,
        }),
        (sizes) => {
          const parts = sizes.map(([l, w], i) => part(`p${i}`, l / 10, w / 10));
          const layout = solved(parts, [board(1, 1)], options(0));
          expect(layout.sheets.length).toBe(leastSheets(sizes, 10, 10));
          expect(layout.provedOptimal).toBe(true);
        },
      ),
      { seed: 43, numRuns: 300 },
    );
  });

  it('lays four quarters on one board only where the kerf leaves room', () => {
    const quarters = [part('quarter', 1.2185, 0.6085, 4)];
    expect(solved(quarters, [board(2.44, 1.22)], options(0.003)).sheets.length).toBe(1);
    expect(solved(quarters, [board(2.44, 1.22)], options(0.0031)).sheets.length).toBe(4);
    expect(solved(quarters, [board(2.44, 1.22)], options(0.003, 0.001)).sheets.length).toBe(4);
  });

  it('knows that thirteen unlike parts above half a board both ways need thirteen boards', () => {
    const parts = Array.from({ length: 13 }, (_, i) => part(`p${i}`, 0.6 + i / 100, 0.75 - i / 100));
    const layout = solved(parts, [board(1, 1)], options(0.003));
    expect(layout).toMatchObject({ lowerBound: 13, provedOptimal: true, rounds: 0 });
  });

  it('keeps to the stock, and takes the small board where that is enough', () => {
    const parts = [part('side', 0.6, 0.3, 2)];
    const layout = solved(parts, [board(2.44, 1.22), board(1.3, 0.4, 1)], options(0.003, 0, 200));
    expect(layout.sheets.map(({ stock }) => stock)).toEqual([1]);
    const short = layOutSheets([part('side', 0.9, 0.9, 3)], [board(1, 1, 2)], options(0.003));
    expect(short.ok ? [] : short.problems.map(({ code, values }) => [code, values])).toEqual([
      ['build.stock-too-short', { sheets: 2, least: 3 }],
    ]);
  });

  it('gives the same layout for the same seed, and stops when asked', () => {
    const parts = [part('a', 0.9, 0.5, 3), part('b', 0.7, 0.45, 5), part('c', 0.41, 0.33, 9), part('d', 1.1, 0.2, 4)];
    const by = options(0.004, 0.005, 500);
    expect(solved(parts, [board(2.5, 1.25)], by)).toEqual(solved(parts, [board(2.5, 1.25)], by));
    const hard = [part('e', 0.9, 0.62, 7)];
    let asked = 0;
    const rounds: number[] = [];
    const layout = solved([...hard, ...parts], [board(2.5, 1.25)], {
      ...by,
      effort: 100_000,
      shouldStop: () => ++asked > 120,
      onProgress: ({ round }) => rounds.push(round),
    });
    expect(layout).toMatchObject({ stopped: true, rounds: 120 });
    expect(rounds).toEqual([50, 100]);
  });

  it('names the part that no sheet takes, and turns it only where it may', () => {
    const tall = layOutSheets([part('front', 0.5, 1.3)], [board(2.44, 1.22)], options(0));
    expect(tall.ok ? [] : tall.problems.map(({ code, place, values }) => [code, place.id, values.turning])).toEqual([
      ['build.part-too-large', 'front', 'not allowed'],
    ]);
    expect(
      solved([part('front', 0.5, 1.3, 1, true)], [board(2.44, 1.22)], options(0)).sheets[0]!.parts[0]!.rotated,
    ).toBe(true);
  });

  it('refuses what is no size, number or saw', () => {
    const codes = (parts: readonly SheetPart[], stock: readonly StockSheet[], by: CuttingOptions): string[] => {
      const found = layOutSheets(parts, stock, by);
      return found.ok ? [] : found.problems.map(({ code }) => code);
    };
    expect(codes([part('x', Number.NaN, 1)], [board(2, 1)], options(0))).toEqual(['build.part-without-size']);
    expect(codes([part('x', 1, 1, 1.5)], [board(2, 1)], options(0))).toEqual(['build.part-without-size']);
    expect(codes([part('x', 1, 1)], [board(2, 0)], options(0))).toEqual(['build.sheet-without-size']);
    expect(codes([part('x', 1, 1)], [board(2, 1)], options(-0.001))).toEqual(['build.saw-below-zero']);
    expect(codes([part('x', 1, 1)], [], options(0))).toEqual(['build.no-stock']);
    expect(codes([part('x', 0.1, 0.1, 601)], [board(2, 1)], options(0))).toEqual(['build.too-many-pieces']);
    expect(solved([], [], options(0)).sheets).toEqual([]);
  });
});
