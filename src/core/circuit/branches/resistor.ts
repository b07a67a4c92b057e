import type { AdmittanceBranch } from '../branch.ts';
import { LEAST_OHM } from './leastOhm.ts';

/**
 * A resistor, y = 1/R. R below 1 mΩ counts as 1 mΩ, and the branch says so.
 * @example resistor('R1', ['a', '0'], 8.2)
 */
export function resistor(id: string, nodes: readonly [string, string], ohm: number): AdmittanceBranch {
  const floored = ohm < LEAST_OHM;
  const conductance = 1 / Math.max(ohm, LEAST_OHM);
  return {
    kind: 'admittance',
    id,
    nodes,
    ...(floored ? { short: 'floored' as const } : {}),
    conductanceS: conductance,
    admittance: (_omegas, outRe, outIm) => {
      outRe.fill(conductance);
      outIm.fill(0);
    },
    derivatives: {
      ohm: {
        value: ohm,
        derivative: (_omegas, outRe, outIm) => {
          outRe.fill(floored ? 0 : -conductance * conductance);
          outIm.fill(0);
        },
      },
    },
  };
}
