import type { Place, Problem } from '../../messages/problem.ts';

export type InterferenceRemedy = 'move' | 'shorten' | 'deepen' | 'smaller' | 'turn' | 'window';

/** Two things that cannot both be, or that leave too little between them. `word` makes its sentence. */
export interface Interference extends Problem {
  /** A fault cannot be built, or cannot work; a warning can. */
  readonly severity: 'fault' | 'warning';
  /** What there is and what it takes; the difference is what is missing. */
  readonly haveM: number;
  readonly needM: number;
  readonly remedy: InterferenceRemedy;
}

export const interference = (
  severity: Interference['severity'],
  code: string,
  place: Place,
  remedy: InterferenceRemedy,
  haveM: number,
  needM: number,
  names: Readonly<Record<string, string>>,
): Interference => ({ severity, code, place, remedy, haveM, needM, values: { ...names, haveM, needM } });

/** Distances closer than this are contact, not overlap. */
export const TOUCHING_M = 1e-9;
