import type { CoilHeat } from './coilHeat.ts';
import { HEAT_LIMITS_C } from './formerLimits.ts';

type Range = readonly [low: number, high: number];

/** How coils of one size usually take heat, as ranges. */
export interface UsualCoilHeat {
  /** Diameters of the coil for which it stands, m. */
  readonly diameterM: Range;
  readonly coilKg: Range;
  readonly coilJPerK: Range;
  readonly coilKPerW: Range;
  readonly coilS: Range;
  readonly magnetJPerK: Range;
  readonly magnetKPerW: Range;
  readonly magnetS: Range;
}

export type CoilSize = 'dome' | 'small' | 'medium' | 'large';

/** From memory, spread a factor 2: a start that the person changes, never a fact about a driver. */
export const USUAL_COIL_HEAT: Readonly<Record<CoilSize, UsualCoilHeat>> = {
  dome: {
    diameterM: [0.019, 0.028],
    coilKg: [0.0001, 0.0003],
    coilJPerK: [0.1, 0.2],
    coilKPerW: [6, 12],
    coilS: [0.7, 2],
    magnetJPerK: [150, 400],
    magnetKPerW: [3, 6],
    magnetS: [600, 1800],
  },
  small: {
    diameterM: [0.025, 0.038],
    coilKg: [0.004, 0.008],
    coilJPerK: [1.5, 3],
    coilKPerW: [2.5, 5],
    coilS: [6, 12],
    magnetJPerK: [400, 1200],
    magnetKPerW: [1.5, 3],
    magnetS: [1200, 2700],
  },
  medium: {
    diameterM: [0.05, 0.075],
    coilKg: [0.012, 0.03],
    coilJPerK: [5, 12],
    coilKPerW: [0.9, 2],
    coilS: [8, 15],
    magnetJPerK: [1200, 3000],
    magnetKPerW: [0.7, 1.5],
    magnetS: [1800, 3600],
  },
  large: {
    diameterM: [0.1, 0.1],
    coilKg: [0.03, 0.05],
    coilJPerK: [12, 20],
    coilKPerW: [0.5, 0.9],
    coilS: [10, 15],
    magnetJPerK: [2500, 5000],
    magnetKPerW: [0.4, 0.8],
    magnetS: [2400, 4800],
  },
};

const middle = ([low, high]: Range): number => Math.sqrt(low * high);

/**
 * The size class of a coil (diameter, not radius) by the nearest middle on a ratio scale; a dome's is always `dome`.
 * @example coilSizeOf(0.035, 'cone') // 'small'
 */
export function coilSizeOf(diameterM: number, shape: 'cone' | 'dome'): CoilSize {
  if (shape === 'dome') return 'dome';
  const sizes = ['small', 'medium', 'large'] as const;
  const distance = (size: CoilSize): number => Math.abs(Math.log(diameterM / middle(USUAL_COIL_HEAT[size].diameterM)));
  return sizes.reduce((best, size) => (distance(size) < distance(best) ? size : best));
}

/**
 * Heat of a usual coil of its size: copper, geometric middles of `USUAL_COIL_HEAT`, the careful limit of a polyimide former.
 *
 * From memory, spread a factor 2. Ferrofluid in the gap halves the coil's resistance to the magnet, and its time constant with it.
 * @example usualCoilHeat('small').path[0].resistanceKPerW // 3.54
 */
export function usualCoilHeat(size: CoilSize, hasFerrofluid = false): CoilHeat {
  const usual = USUAL_COIL_HEAT[size];
  const share = hasFerrofluid ? 0.5 : 1;
  return {
    metal: 'copper',
    path: [
      { resistanceKPerW: share * middle(usual.coilKPerW), timeConstantS: share * middle(usual.coilS) },
      { resistanceKPerW: middle(usual.magnetKPerW), timeConstantS: middle(usual.magnetS) },
    ],
    limitC: HEAT_LIMITS_C.polyimide[0],
  };
}
