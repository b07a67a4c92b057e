import type { Target } from '../targets/index.ts';
import type { CrossoverTrial } from '../trial/index.ts';

/** Between which values a part may be chosen, in its unit. */
export interface ValueBounds {
  readonly least: number;
  readonly greatest: number;
}

/**
 * Bounds for every variable at a factor either side of its own value.
 * @example boundsAround(trial, 4)
 */
export const boundsAround = (trial: CrossoverTrial, factor: number): ValueBounds[] =>
  Array.from(trial.start, (value) => ({ least: value / factor, greatest: value * factor }));

/** Price of a part of value x: fixed + perUnit × x^exponent, in whatever money the person counts. */
export interface PriceLaw {
  readonly fixed: number;
  readonly perUnit: number;
  readonly exponent: number;
}

/** What a design must keep to besides its target. */
export interface Limits {
  /** |Z| at an amplifier's terminals over the trial's sweep. */
  readonly leastImpedances: readonly { readonly amplifierId: string; readonly ohm: number }[];
  /** Power in a part with a sine at the set drive, at every frequency of the trial's sweep. */
  readonly greatestPowers: readonly { readonly partId: string; readonly watt: number }[];
  /** Prices in the order of the trial's variables; null: no part of the sum. */
  readonly cost: { readonly most: number; readonly prices: readonly (PriceLaw | null)[] } | null;
}

export const NO_LIMITS: Limits = { leastImpedances: [], greatestPowers: [], cost: null };

/** A crossover to be brought to its targets by the values of its parts. */
export interface FitProblem {
  readonly trial: CrossoverTrial;
  readonly targets: readonly Target[];
  /** In the order of the trial's variables. */
  readonly bounds: readonly ValueBounds[];
  readonly limits: Limits;
}

/** What is made small: the weighted root mean square of the error, or the greatest error wherever there is a weight. */
export type Criterion = 'rms' | 'greatest';

/** A design with what it comes to. */
export interface Scored {
  readonly values: Float64Array;
  /** Root of the weighted mean square of the error over all targets, dB. */
  readonly rmsDb: number;
  /** Greatest error at any frequency with a weight, dB. */
  readonly greatestDb: number;
  /** By how much the worst limit is passed, relative; 0: all are kept. */
  readonly excess: number;
  /** Sum of the prices; null where none are given. */
  readonly cost: number | null;
}

/** A limit passed by less than this, relative, counts as kept: what the continuous search ends at. */
export const KEPT_WITHIN = 1e-3;

/** What designs are compared by, dB: a passed limit weighs more than any error. */
export const meritOf = ({ rmsDb, greatestDb, excess }: Omit<Scored, 'values'>, criterion: Criterion): number =>
  (criterion === 'rms' ? rmsDb : greatestDb) + 1000 * Math.max(0, excess - KEPT_WITHIN);
