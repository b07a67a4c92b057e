import { sectionInductanceH } from '../winding/sectionInductance.ts';
import { outerRadiusM } from '../winding/windingSection.ts';
import { couplingBetween, crosstalkRatio } from './coupling.ts';
import type { PlacedCoil } from './placedCoil.ts';
import { lengthOf, minus } from './vector.ts';

/** A coil of a board by its part. */
export interface BoardCoil extends PlacedCoil {
  readonly id: string;
}

/** Two coils of a board: how they couple and what leaks, from the first into the second and back, as ratios of voltages. */
export interface CoilPair {
  readonly first: string;
  readonly second: string;
  readonly coupling: number;
  readonly leakIntoSecond: number;
  readonly leakIntoFirst: number;
  readonly distanceM: number;
  /** Their middles are closer than the sum of their outer radii: they may touch, and the figures are rough. */
  readonly isClose: boolean;
}

/**
 * Every two coils of a board, worst coupling first.
 * @example coilPairs(coils).filter(({ coupling }) => Math.abs(coupling) > COUPLING_ALLOWED.to40Db)
 */
export function coilPairs(coils: readonly BoardCoil[]): CoilPair[] {
  const henries = new Map(coils.map(({ id, section }) => [id, sectionInductanceH(section)]));
  const pairs = coils.flatMap((first, n) =>
    coils.slice(n + 1).map((second): CoilPair => {
      const [firstHenry, secondHenry] = [henries.get(first.id)!, henries.get(second.id)!];
      const coupling = couplingBetween(first, second, firstHenry, secondHenry);
      const distanceM = lengthOf(minus(second.centre, first.centre));
      return {
        first: first.id,
        second: second.id,
        coupling,
        leakIntoSecond: crosstalkRatio(coupling, firstHenry, secondHenry),
        leakIntoFirst: crosstalkRatio(coupling, secondHenry, firstHenry),
        distanceM,
        isClose: distanceM < outerRadiusM(first.section) + outerRadiusM(second.section),
      };
    }),
  );
  return pairs.sort((a, b) => Math.abs(b.coupling) - Math.abs(a.coupling));
}
