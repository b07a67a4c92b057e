import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reduceSeriesParallel } from '../../../src/core/schematic/index.ts';
import { leavesOf } from '../../../src/core/schematic/spTree.ts';

type Pair = readonly [string, string];
const ladder: Pair[] = [
  ['in', 'a'],
  ['a', '0'],
  ['a', 'b'],
  ['b', '0'],
  ['b', 'c'],
  ['c', '0'],
];
const wheatstone: Pair[] = [
  ['in', 'a'],
  ['in', 'b'],
  ['a', 'b'],
  ['a', '0'],
  ['b', '0'],
];

describe('series-parallel reduction', () => {
  it('takes a ladder down to one edge that still holds every part', () => {
    const { edges, seriesSteps, parallelSteps, dangling } = reduceSeriesParallel(ladder, ['in', '0']);
    expect({ left: edges.length, seriesSteps, parallelSteps, dangling }).toEqual({
      left: 1,
      seriesSteps: 3,
      parallelSteps: 2,
      dangling: [],
    });
    const held = leavesOf(edges[0]!).map((leaf) => leaf.edge);
    expect(held.sort()).toEqual([0, 1, 2, 3, 4, 5]);
  });

  it('leaves a Wheatstone bridge as it is', () => {
    expect(reduceSeriesParallel(wheatstone, ['in', '0']).edges).toHaveLength(5);
  });

  it('sets aside what hangs on one node, a whole branch of it part by part', () => {
    const { edges, dangling, seriesSteps } = reduceSeriesParallel(
      [...ladder, ['b', 'x'], ['x', 'y'], ['x', 'z']],
      ['in', '0'],
    );
    expect(edges).toHaveLength(1);
    expect(seriesSteps).toBe(3);
    expect(dangling.map(({ from, to }) => `${from}-${to}`).sort()).toEqual(['b-x', 'x-y', 'x-z']);
  });

  it('sets aside a part with both ends on one node', () => {
    const { edges, dangling } = reduceSeriesParallel([...ladder, ['a', 'a']], ['in', '0']);
    expect(edges).toHaveLength(1);
    expect(dangling).toHaveLength(1);
  });

  it('ends the same whatever the order and direction of the edges (Duffin 1965; seed 20250615)', () => {
    const node = fc.integer({ min: 0, max: 7 }).map(String);
    const network = fc.array(
      fc.tuple(node, node).filter(([a, b]) => a !== b),
      { minLength: 1, maxLength: 16 },
    );
    const shuffled = network.chain((pairs) =>
      fc.tuple(
        fc.constant(pairs),
        fc.shuffledSubarray(pairs, { minLength: pairs.length }),
        fc.array(fc.boolean(), { minLength: pairs.length, maxLength: pairs.length }),
      ),
    );
    fc.assert(
      fc.property(shuffled, ([pairs, mixed, turns]) => {
        const turned = mixed.map(([a, b], k): Pair => (turns[k] ? [b, a] : [a, b]));
        const ends = (list: readonly Pair[]): string[] => {
          const { edges, seriesSteps, parallelSteps, dangling } = reduceSeriesParallel(list, ['0', '1']);
          const left = edges.map(({ from, to }) => [from, to].sort().join('-')).sort();
          // A loop on one node may be taken off before or after its neighbours are spliced: no unique count there.
          const isCounted = dangling.every(({ shape }) => shape === 'leaf');
          return [...left, isCounted ? `${seriesSteps} in series, ${parallelSteps} in parallel` : 'a loop hangs on'];
        };
        expect(ends(turned)).toEqual(ends(pairs));
      }),
      { seed: 20250615, numRuns: 500 },
    );
  });

  it('keeps every edge in one tree or among what dangles (seed 20250616)', () => {
    const node = fc.integer({ min: 0, max: 6 }).map(String);
    fc.assert(
      fc.property(fc.array(fc.tuple(node, node), { maxLength: 20 }), (pairs) => {
        const { edges, dangling } = reduceSeriesParallel(pairs, ['0', '1']);
        const held = [...edges, ...dangling].flatMap(leavesOf).map((leaf) => leaf.edge);
        expect(held.sort((a, b) => a - b)).toEqual(pairs.map((_, k) => k));
      }),
      { seed: 20250616, numRuns: 300 },
    );
  });
});
