import { constantValue } from './branchValue.ts';
import type { CompiledCircuit } from './compiledCircuit.ts';
import type { AdmittanceTable } from './tabulateAdmittances.ts';

/** How one matrix entry is made from the tabulated rows: constant + sign × Σ re + j sign × Σ im. */
export interface FillEntry {
  readonly slot: number;
  readonly constant: number;
  readonly sign: number;
  readonly re: readonly Float64Array[];
  readonly im: readonly Float64Array[];
}
export type FillPlan = readonly FillEntry[];

/** The plan for a table: what does not depend on frequency is added up here, once. */
export function fillPlan({ stamps, branches, elimination }: CompiledCircuit, { rows }: AdmittanceTable): FillPlan {
  return elimination.filled.map((slot) => {
    const { sign, admittances, constants } = stamps.entries[slot]!;
    let constant = 0;
    for (const one of constants) constant += one.sign * constantValue(branches[one.branch]!);
    const re: Float64Array[] = [];
    const im: Float64Array[] = [];
    for (const index of admittances) {
      const row = rows[index]!;
      const { conductanceS } = row.branch;
      if (conductanceS !== undefined) constant += sign * conductanceS;
      else {
        re.push(row.re);
        im.push(row.im);
      }
    }
    return { slot, constant, sign, re, im };
  });
}
