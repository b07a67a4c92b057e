import type { Complex } from '../../math/complex.ts';
import type { Admittance } from '../admittance.ts';
import type { ViscousAir } from '../viscousAir.ts';
import { type Duct, ductPiForm } from './duct.ts';
import type { PiForm } from './piForm.ts';

/**
 * A duct as three branches: `between` from its near node to its far node, the two shunts from these nodes to still air.
 *
 * Flow into the duct at its near end is the sum of `between` (near to far) and `nearShunt`; out of its far end, `between` less
 * `farShunt`. What hangs at the far node (a load, the next duct) sees that flow.
 */
export interface DuctBranches {
  readonly between: Admittance;
  readonly nearShunt: Admittance;
  readonly farShunt: Admittance;
}

interface Tabulated {
  readonly omegas: Float64Array;
  readonly forms: readonly PiForm[];
}

/**
 * The three branches of anything reciprocal that is given as its pi form at one angular frequency.
 *
 * Solvers ask for the three one after the other over the same sweep: it is computed once and kept.
 */
export const twoPortBranches = (piAt: (omega: number) => PiForm): DuctBranches => {
  let last: Tabulated = { omegas: new Float64Array(0), forms: [] };
  const tabulated = (omegas: Float64Array): readonly PiForm[] => {
    const same = omegas.length === last.omegas.length && omegas.every((omega, i) => omega === last.omegas[i]);
    if (!same) last = { omegas: omegas.slice(), forms: Array.from(omegas, piAt) };
    return last.forms;
  };
  const branch =
    (pick: (form: PiForm) => Complex): Admittance =>
    (omegas, outRe, outIm) => {
      tabulated(omegas).forEach((form, i) => {
        const { re, im } = pick(form);
        outRe[i] = re;
        outIm[i] = im;
      });
    };
  return {
    between: branch((form) => form.between),
    nearShunt: branch((form) => form.nearShunt),
    farShunt: branch((form) => form.farShunt),
  };
};

/**
 * The three branches of a duct with its wall losses or its filling, m³/(s·Pa): no inner node. Range and error: `ductTwoPort`.
 *
 * Example: ductBranches({ section: { kind: 'round', diameterM: 0.07 }, lengthM: 0.2 }, air)
 */
export const ductBranches = (duct: Duct, air: ViscousAir): DuctBranches =>
  twoPortBranches((omega) => ductPiForm(duct, air, omega));
