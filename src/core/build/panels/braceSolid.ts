import { type HalfSpace, unionVolume, volumeOf } from '../solid/index.ts';
import type { Axis, CabinetBrace, Range } from './cabinet.ts';
import { slab } from './chamberSpaces.ts';

export const AXES: readonly Axis[] = ['x', 'y', 'z'];

/** The half-spaces of ranges on some of the axes. */
export const rangesToSpaces = (ranges: Partial<Record<Axis, Range>>): HalfSpace[] =>
  AXES.flatMap((axis) => {
    const range = ranges[axis];
    return range === undefined ? [] : slab(axis, range);
  });

/** The board of a brace within its chamber, without its windows cut. */
export const braceSpaces = (
  { axis, atM, thicknessM, spanM }: CabinetBrace,
  chamber: readonly HalfSpace[],
): HalfSpace[] => [...chamber, ...slab(axis, [atM, atM + thicknessM]), ...rangesToSpaces(spanM)];

/** Wood of a brace, windows cut, m³. */
export const braceWoodM3 = (brace: CabinetBrace, chamber: readonly HalfSpace[]): number => {
  const board = braceSpaces(brace, chamber);
  return volumeOf(board) - unionVolume(brace.windowsM.map((window) => [...board, ...rangesToSpaces(window)]));
};
