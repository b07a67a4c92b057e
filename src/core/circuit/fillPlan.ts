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
export interface FillPlan {
  readonly entries: readonly FillEntry[];
  /** By row, about what the branches put into its diagonal together, squared: their magnitudes at a few frequencies. */
  readonly grossSquares: Float64Array;
}

/** The plan for a table: what does not depend on frequency is added up here, once. */
export function fillPlan(compiled: CompiledCircuit, table: AdmittanceTable): FillPlan {
  const entries = fillEntries(compiled, table);
  const grossSquares = new Float64Array(compiled.unknownCount);
  for (const { slot, constant, re, im } of entries) {
    if (slot < grossSquares.length) grossSquares[slot] = grossOf(constant, re, im, table.omegas.length) ** 2;
  }
  return { entries, grossSquares };
}

/** The greatest of three frequencies. */
function grossOf(constant: number, re: readonly Float64Array[], im: readonly Float64Array[], count: number): number {
  let greatest = 0;
  for (let sample = 0; sample < 3; sample++) {
    const f = Math.round(((count - 1) * sample) / 2);
    let gross = Math.abs(constant);
    for (let t = 0; t < re.length; t++) gross += Math.abs(re[t]![f]!) + Math.abs(im[t]![f]!);
    greatest = Math.max(greatest, gross);
  }
  return greatest;
}

function fillEntries({ stamps, branches, elimination }: CompiledCircuit, { rows }: AdmittanceTable): FillEntry[] {
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
