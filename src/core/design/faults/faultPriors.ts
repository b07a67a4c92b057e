import type { Fault, FaultKind } from './fault.ts';

/**
 * How often each kind of fault is met in kits put together at a table, as weights. An own judgement, no source: soldering slips (a part
 * left off, two values mixed up, a wrong value from the drawer) come first, failed drivers and blocked ports last.
 */
const WEIGHTS: Readonly<Record<FaultKind, number>> = {
  'part-value': 20,
  'part-open': 14,
  exchanged: 12,
  'wrong-node': 12,
  'part-decade': 6,
  'part-short': 6,
  'link-missing': 5,
  'driver-reversed': 10,
  'driver-open': 5,
  'driver-resonance': 5,
  leak: 5,
  cable: 4,
  'port-length': 3,
  'port-blocked': 2,
};

/** Shares of healthy builds, of builds with one fault and of those with two, before anything is measured (own judgement). */
const HEALTHY = 0.6;
const SINGLE = 0.37;
const DOUBLE = 0.03;

export interface FaultPriors {
  readonly logHealthy: number;
  logSingle(fault: Fault): number;
  logDouble(first: Fault, second: Fault): number;
}

/** Probabilities beforehand of the listed single faults and of their pairs: each kind's weight is shared by all of that kind. */
export function faultPriors(faults: readonly Fault[]): FaultPriors {
  const counts = new Map<FaultKind, number>();
  for (const { kind } of faults) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const total = [...counts.keys()].reduce((sum, kind) => sum + WEIGHTS[kind], 0);
  const logOf = ({ kind }: Fault): number => Math.log(WEIGHTS[kind] / total / (counts.get(kind) ?? 1));
  return {
    logHealthy: Math.log(HEALTHY),
    logSingle: (fault) => Math.log(SINGLE) + logOf(fault),
    logDouble: (first, second) => Math.log(2 * DOUBLE) + logOf(first) + logOf(second),
  };
}
