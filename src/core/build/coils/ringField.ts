import { ellipticIntegrals } from '../../math/ellipticIntegrals.ts';
import { MU0 } from './vacuum.ts';

/** Flux density of a ring's field, T per ampere: away from its axis and along it. */
export interface RingField {
  readonly radialTPerA: number;
  readonly axialTPerA: number;
}

/**
 * Field of a circular filament of radius `ringM` at distance `radiusM` (above 0) from its axis and `heightM` above its plane, m.
 * Throws a RangeError on the filament itself.
 *
 * Source: W. R. Smythe, Static and Dynamic Electricity, 1950, section 7.10 (from memory).
 * @example ringField(0.02, 1e-9, 0).axialTPerA // 3.14e-5, which is μ0/(2a)
 */
export function ringField(ringM: number, radiusM: number, heightM: number): RingField {
  const near = (ringM - radiusM) ** 2 + heightM ** 2;
  const far = (ringM + radiusM) ** 2 + heightM ** 2;
  const { k, e } = ellipticIntegrals((4 * ringM * radiusM) / far);
  const scale = MU0 / (2 * Math.PI * Math.sqrt(far));
  const squares = radiusM ** 2 + heightM ** 2;
  return {
    radialTPerA: ((scale * heightM) / radiusM) * (((ringM ** 2 + squares) / near) * e - k),
    axialTPerA: scale * (((ringM ** 2 - squares) / near) * e + k),
  };
}
