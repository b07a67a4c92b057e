import type { Turn } from './turns.ts';

/**
 * Resistance of turns to direct current, ohm: ρ Σ 2π r/A, wire of bare diameter `wireM` (m). For equal turns ρ 2π a N/A.
 * @example turnsOhm(layTurns(layout), 1e-3, 1.724e-8)
 */
export function turnsOhm(turns: readonly Turn[], wireM: number, resistivityOhmM: number): number {
  const lengthM = turns.reduce((sum, { radiusM }) => sum + 2 * Math.PI * radiusM, 0);
  return (resistivityOhmM * lengthM) / ((Math.PI * wireM ** 2) / 4);
}
