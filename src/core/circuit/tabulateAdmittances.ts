import type { AdmittanceBranch, SourceBranch } from './branch.ts';
import type { CompiledCircuit } from './compiledCircuit.ts';

/** Admittance of one branch over the sweep, siemens. */
export interface AdmittanceRow {
  readonly branch: AdmittanceBranch;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** The factor on a source's voltage over the sweep. */
export interface DriveRow {
  readonly branch: SourceBranch;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** One row for each branch of a compiled circuit, null for sources and gyrators. */
export interface AdmittanceTable {
  readonly omegas: Float64Array;
  readonly rows: readonly (AdmittanceRow | null)[];
  /** By index of the source, for those with a factor of their own. */
  readonly drives: ReadonlyMap<number, DriveRow>;
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
    return { branch, re, im };
  });
  return { omegas, rows, drives: tabulateDrives(compiled, omegas) };
}

/**
 * The same at the frequencies of an earlier table and in its buffers, which that table loses: for long series of trials
 * in which all values change. A row whose branch object is the same stays as it is.
 * @example table = retabulate(compiled, table);
 */
export function retabulate(compiled: CompiledCircuit, earlier: AdmittanceTable): AdmittanceTable {
  const { omegas } = earlier;
  const rows = compiled.branches.map((branch, index) => {
    if (branch.kind !== 'admittance') return null;
    const old = earlier.rows[index];
    if (old?.branch === branch) return old;
    const re = old?.re ?? new Float64Array(omegas.length);
    const im = old?.im ?? new Float64Array(omegas.length);
    branch.admittance(omegas, re, im);
    return { branch, re, im };
  });
  return { omegas, rows, drives: tabulateDrives(compiled, omegas) };
}

function tabulateDrives(compiled: CompiledCircuit, omegas: Float64Array): ReadonlyMap<number, DriveRow> {
  const drives = new Map<number, DriveRow>();
  compiled.branches.forEach((branch, index) => {
    if (branch.kind !== 'source' || branch.drive === undefined) return;
    const re = new Float64Array(omegas.length);
    const im = new Float64Array(omegas.length);
    branch.drive(omegas, re, im);
    drives.set(index, { branch, re, im });
  });
  return drives;
}

function sameNumbers(a: Float64Array, b: Float64Array): boolean {
  if (a === b) return true;
  return a.length === b.length && a.every((value, i) => value === b[i]);
}
