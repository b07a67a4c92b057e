import type { RandomStream } from '../../math/randomStream.ts';
import { type Block, digitOf, type PieceType, pairBlock, radixesOf, singleBlocks } from './block.ts';
import type { Field } from './sawGrid.ts';

export interface DenseRules {
  /** Blocks kept for each number of pieces. */
  readonly width: number;
  /** Least share of a block that is pieces. */
  readonly fill: number;
  readonly random: RandomStream;
}

const fillOf = ({ area, w, h }: Block): number => area / (w * h);

/**
 * Rectangles that fit a sheet and are nearly all pieces, densest and largest first: built from pieces upwards by joining two
 * blocks that lose little between them, the best `width` kept for each number of pieces. Bottom-up building is P. Y. Wang,
 * Operations Research 31, 1983, 573 (from memory); the limited width makes it a search, not a proof.
 */
export function denseBlocks(types: readonly PieceType[], field: Field, rules: DenseRules): Block[] {
  const weights = radixesOf(types);
  const counts = types.map(({ members }) => members.length);
  const many = counts.reduce((sum, count) => sum + count, 0);
  const digits = new Map<number, readonly number[]>();
  const digitsOf = (key: number): readonly number[] => {
    let known = digits.get(key);
    if (known === undefined) {
      known = types.map((_, type) => digitOf(key, type, weights));
      digits.set(key, known);
    }
    return known;
  };
  const enough = (a: number, b: number): boolean => {
    const [of, and] = [digitsOf(a), digitsOf(b)];
    for (let type = 0; type < counts.length; type++) if (of[type]! + and[type]! > counts[type]!) return false;
    return true;
  };

  const levels: (readonly Block[])[] = [
    [],
    singleBlocks(types, weights).filter((b) => b.w <= field.w && b.h <= field.h),
  ];
  for (let size = 2; size <= many; size++) {
    const best = new Map<string, Block>();
    let floor = rules.fill;
    for (let half = 1; half <= size - half; half++) {
      const [ones, others] = [levels[half]!, levels[size - half]!];
      for (const a of ones) {
        for (const b of others) {
          const area = a.area + b.area;
          for (let across = 0; across < 2; across++) {
            const w = across === 0 ? a.w + b.w : Math.max(a.w, b.w);
            const h = across === 0 ? Math.max(a.h, b.h) : a.h + b.h;
            if (w > field.w || h > field.h || area < floor * w * h || !enough(a.key, b.key)) continue;
            // The same pieces in the same orientation of the last join are one entry: the denser wins.
            const entry = `${a.key + b.key} ${w >= h}`;
            const known = best.get(entry);
            if (known === undefined || w * h < known.w * known.h)
              best.set(entry, pairBlock(a, b, across === 0 ? 'x' : 'y'));
          }
        }
      }
      // Too many to keep: raise the bar for the rest of this number of pieces.
      if (best.size > 6 * rules.width) floor = Math.max(floor, nthFill([...best.values()], 2 * rules.width));
    }
    const ranked = [...best.values()].map((block) => ({ block, rank: fillOf(block) - 0.01 * rules.random.uniform() }));
    ranked.sort((a, b) => b.rank - a.rank);
    levels.push(ranked.slice(0, rules.width).map(({ block }) => block));
  }
  return levels.flat().sort((a, b) => b.area - a.area);
}

const nthFill = (blocks: readonly Block[], n: number): number => {
  const fills = blocks.map(fillOf).sort((a, b) => b - a);
  return fills[Math.min(n, fills.length - 1)]!;
};
