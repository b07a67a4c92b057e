import type { Branch } from './branch.ts';

/** The value that a branch adds to the equations at every frequency alike: gyration or conductance, siemens. */
export function constantValue(branch: Branch): number {
  if (branch.kind === 'gyrator') return branch.gyrationS;
  if (branch.kind === 'source') return 1 / branch.resistanceOhm;
  throw new Error(`The admittance of ${branch.id} depends on frequency.`);
}

/** The voltage of a source branch. */
export function sourceVoltage(branch: Branch): number {
  if (branch.kind === 'source') return branch.voltageV;
  throw new Error(`${branch.id} is no source.`);
}
