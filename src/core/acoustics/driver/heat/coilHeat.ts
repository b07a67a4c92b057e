import type { CoilMetal } from './coilMetal.ts';
import type { HeatPath } from './heatPath.ts';

/** How a driver's coil takes heat. */
export interface CoilHeat {
  readonly metal: CoilMetal;
  readonly path: HeatPath;
  /** Highest temperature of coil and former, °C. */
  readonly limitC: number;
}
