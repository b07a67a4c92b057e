import type { Position } from '../acoustics/index.ts';
import type { Listening } from '../document/schema.ts';

/**
 * The listening point in the cabinet's frame: origin at the bottom centre of the front face, x to the listener's right,
 * y up, z towards the listener.
 *
 * On axis it lies `distanceM` in front of the front plane at the listening height; angles turn it about the point of the
 * front plane at that height, positive to the right and up. The height is above the floor, so the stand is taken off.
 * @example listeningPoint({ distanceM: 2, heightM: 0.9, standHeightM: 0.3, horizontalDeg: 0, ... }) // (0, 0.6, 2)
 */
export function listeningPoint(listening: Listening): Position {
  const h = (listening.horizontalDeg * Math.PI) / 180;
  const v = (listening.verticalDeg * Math.PI) / 180;
  return {
    xM: listening.distanceM * Math.sin(h) * Math.cos(v),
    yM: listening.heightM - listening.standHeightM + listening.distanceM * Math.sin(v),
    zM: listening.distanceM * Math.cos(h) * Math.cos(v),
  };
}
