import type { MeasuredTable } from './model.ts';

interface GridValues {
  /** Natural logarithm of the magnitude. */
  readonly logMagnitudes: Float64Array;
  readonly phasesRad: Float64Array;
}

const kept = new WeakMap<MeasuredTable, { readonly omegas: Float64Array; readonly values: GridValues }>();

/**
 * A measured table on the sweep's angular frequencies, linear in log frequency for log magnitude and unwrapped phase; the
 * end values hold outside the table. The last result for a table is kept, since tables and grids rarely change.
 */
export function tableOnGrid(table: MeasuredTable, omegas: Float64Array): GridValues {
  const last = kept.get(table);
  if (last !== undefined && (last.omegas === omegas || sameNumbers(last.omegas, omegas))) return last.values;
  const { frequenciesHz, magnitudes, phasesRad } = table;
  const values = { logMagnitudes: new Float64Array(omegas.length), phasesRad: new Float64Array(omegas.length) };
  const end = frequenciesHz.length - 1;
  let k = 0;
  for (let i = 0; i < omegas.length; i++) {
    const hz = omegas[i]! / (2 * Math.PI);
    while (k < end - 1 && frequenciesHz[k + 1]! <= hz) k++;
    const low = frequenciesHz[k]!;
    const span = Math.log(frequenciesHz[Math.min(k + 1, end)]! / low);
    const share = span > 0 ? Math.min(1, Math.max(0, Math.log(hz / low) / span)) : 0;
    const next = Math.min(k + 1, end);
    values.logMagnitudes[i] = Math.log(magnitudes[k]!) * (1 - share) + Math.log(magnitudes[next]!) * share;
    values.phasesRad[i] = phasesRad[k]! * (1 - share) + phasesRad[next]! * share;
  }
  kept.set(table, { omegas, values });
  return values;
}

function sameNumbers(a: Float64Array, b: Float64Array): boolean {
  return a.length === b.length && a.every((value, i) => value === b[i]);
}
