import type { AdmittanceBranch } from '../branch.ts';
import { LEAST_OHM } from './leastOhm.ts';

/**
 * A link, counted as 1 mΩ.
 * @example jumper('J1', ['high', 'low'])
 */
export function jumper(id: string, nodes: readonly [string, string]): AdmittanceBranch {
  return {
    kind: 'admittance',
    id,
    nodes,
    short: 'link',
    conductanceS: 1 / LEAST_OHM,
    admittance: (_omegas, outRe, outIm) => {
      outRe.fill(1 / LEAST_OHM);
      outIm.fill(0);
    },
  };
}
