import type { AdmittanceBranch } from '../branch.ts';

/** A measured impedance: frequencies ascending; phases unwrapped. */
export interface ImpedanceTable {
  readonly frequenciesHz: Float64Array;
  readonly magnitudesOhm: Float64Array;
  readonly phasesRad: Float64Array;
}

/**
 * A branch with a measured impedance. Between the table's points the logarithm of the magnitude and the phase run
 * straight over the logarithm of the frequency (so impedance and admittance tell the same); outside, the end values hold.
 * @example tabulatedImpedance('LS1', ['plus', '0'], { frequenciesHz, magnitudesOhm, phasesRad })
 */
export function tabulatedImpedance(
  id: string,
  nodes: readonly [string, string],
  table: ImpedanceTable,
): AdmittanceBranch {
  const logOmegas = table.frequenciesHz.map((f) => Math.log(2 * Math.PI * f));
  const logMagnitudes = table.magnitudesOhm.map(Math.log);
  const last = logOmegas.length - 1;
  return {
    kind: 'admittance',
    id,
    nodes,
    admittance: (omegas, outRe, outIm) => {
      let at = 0;
      for (let f = 0; f < omegas.length; f++) {
        const x = Math.min(Math.max(Math.log(omegas[f]!), logOmegas[0]!), logOmegas[last]!);
        while (at < last - 1 && logOmegas[at + 1]! < x) at++;
        const next = Math.min(at + 1, last);
        const span = logOmegas[next]! - logOmegas[at]!;
        const share = span > 0 ? (x - logOmegas[at]!) / span : 0;
        const magnitude = Math.exp(-logMagnitudes[at]! - share * (logMagnitudes[next]! - logMagnitudes[at]!));
        const phase = -table.phasesRad[at]! - share * (table.phasesRad[next]! - table.phasesRad[at]!);
        outRe[f] = magnitude * Math.cos(phase);
        outIm[f] = magnitude * Math.sin(phase);
      }
    },
  };
}
