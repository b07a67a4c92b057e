import { type CoilHeat, type CoilSize, usualCoilHeat } from '../../acoustics/index.ts';
import type { Driver } from '../../document/schema.ts';

/** Outer diameters up to which a driver's coil is usually of a size, m. From memory. */
const SMALL_TO_M = 0.23;
const MEDIUM_TO_M = 0.36;

/**
 * How a driver's coil takes heat: as its document states, or as is usual for its role and size (`isStated` false; from
 * memory, spread a factor 2).
 */
export function coilHeatOf(
  driver: Pick<Driver, 'role' | 'outerDiameterM' | 'heat'>,
): CoilHeat & { readonly isStated: boolean } {
  const { heat } = driver;
  if (heat === null) return { ...usualCoilHeat(usualSize(driver)), isStated: false };
  return {
    metal: heat.wire,
    path: [
      { resistanceKPerW: heat.coilKPerW, timeConstantS: heat.coilS },
      { resistanceKPerW: heat.magnetKPerW, timeConstantS: heat.magnetS },
    ],
    limitC: heat.limitC,
    isStated: true,
  };
}

function usualSize({ role, outerDiameterM }: Pick<Driver, 'role' | 'outerDiameterM'>): CoilSize {
  if (role === 'tweeter') return 'dome';
  if (outerDiameterM <= SMALL_TO_M) return 'small';
  return outerDiameterM <= MEDIUM_TO_M ? 'medium' : 'large';
}
