import type { AdmittanceBranch } from './branch.ts';
import type { CompiledCircuit } from './compiledCircuit.ts';

/** Admittance of one branch over the sweep, siemens. */
export interface AdmittanceRow {
  readonly branch: AdmittanceBranch;
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** False where the branch gave NaN or Infinity somewhere: the solver refuses it by name. */
  readonly finite: boolean;
}

/** One row for each branch of a compiled circuit, null for sources and gyrators. */
export interface AdmittanceTable {
  readonly omegas: Float64Array;
  readonly rows: readonly (AdmittanceRow | null)[];
}

/**
 * Tabulates every branch's admittance at the angular frequencies `omegas` (rad/s, ascending, above 0). A row of
 * `previous` is taken over where both its branch object and the frequencies are the same.
 * @example tabulateAdmittances(compiled, omegas, previousTable)
 */
export function tabulateAdmittances(
  compiled: CompiledCircuit,
  omegas: Float64Array,
  previous?: AdmittanceTable,
): AdmittanceTable {
  const kept = new Map<AdmittanceBranch, AdmittanceRow>();
  if (previous !== undefined && sameNumbers(previous.omegas, omegas)) {
    for (const row of previous.rows) if (row !== null) kept.set(row.branch, row);
  }
  const rows = compiled.branches.map((branch) => {
    if (branch.kind !== 'admittance') return null;
    const row = kept.get(branch);
    if (row !== undefined) return row;
    const re = new Float64Array(omegas.length);
    const im = new Float64Array(omegas.length);
    branch.admittance(omegas, re, im);
    return { branch, re, im, finite: allFinite(re) && allFinite(im) };
  });
  return { omegas, rows };
}

function sameNumbers(a: Float64Array, b: Float64Array): boolean {
  if (a === b) return true;
  return a.length === b.length && a.every((value, i) => value === b[i]);
}

function allFinite(numbers: Float64Array): boolean {
  // 0 × NaN and 0 × Infinity are NaN, and stay so in the sum.
  let zero = 0;
  for (let i = 0; i < numbers.length; i++) zero += 0 * numbers[i]!;
  return zero === 0;
}
