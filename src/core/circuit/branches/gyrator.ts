import type { GyratorBranch } from '../branch.ts';

/**
 * A gyrator between two pairs of nodes: i1 = g v2, i2 = -g v1. A motor of force factor Bl that drives a diaphragm of
 * area Sd turns coil voltage into volume velocity and pressure into coil current with g = Sd/Bl.
 * @example gyrator('LS1 motor', ['emf', '0'], ['front', 'box'], 0.02 / 7)
 */
export const gyrator = (
  id: string,
  primary: readonly [string, string],
  secondary: readonly [string, string],
  gyrationS: number,
): GyratorBranch => ({ kind: 'gyrator', id, primary, secondary, gyrationS });
