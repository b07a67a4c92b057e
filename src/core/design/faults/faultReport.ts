import type { Problem } from '../../messages/problem.ts';
import type { Fault } from './fault.ts';
import type { NextMeasurement } from './nextMeasurement.ts';

/** A value that was fitted: what is wrong is how large it is. */
export interface FittedValue {
  /** `portLengthRatio`: effective length over the nominal one. */
  readonly name: 'ohm' | 'farad' | 'henry' | 'resonanceHz' | 'leakQ' | 'cableOhm' | 'portLengthRatio';
  readonly value: number;
  /** Null where the design has none, as of a leak. */
  readonly nominal: number | null;
  /** Standard deviation as a share of the value. */
  readonly spread: number;
}

export interface RankedFault {
  /** One, or two at once; none: a healthy build. */
  readonly faults: readonly Fault[];
  /** In step with `faults`. */
  readonly fitted: readonly (FittedValue | null)[];
  /** How sure, from 0 to 1, among all that was looked for. */
  readonly probability: number;
  /** Squared misses of the impedance over noise plus what tolerances had to give: a healthy build's come to about `readings`. */
  readonly misfit: number;
  /** Each fault as a worded finding. */
  readonly problems: readonly Problem[];
}

/**
 * Hypotheses whose impedances differ by less than the noise: the measurement cannot tell one from another. One that has all the faults
 * of a likelier one in its group and more is not listed; the group's probability counts it.
 */
export interface FaultGroup {
  readonly probability: number;
  readonly members: readonly RankedFault[];
}

export interface FaultReport {
  readonly verdict: 'nothing-wrong' | 'found' | 'not-explained';
  /** Most likely first; the healthy build is a group of its own. */
  readonly groups: readonly FaultGroup[];
  /** Misfit of a healthy build, the one before. */
  readonly misfitHealthy: number;
  readonly readings: number;
  /** Probability that the best explanation misses by so much by chance. */
  readonly chance: number;
  /** As given, or as the curve's own scatter has it. */
  readonly noiseShare: number;
  /** What neither a healthy nor a faulty reading of this kind can show in this design. */
  readonly invisible: readonly Fault[];
  readonly nextMeasurement: NextMeasurement | null;
  /** The verdict and what should be said besides. */
  readonly problems: readonly Problem[];
  readonly wasStopped: boolean;
}
