import type { Driver } from '../../../../../core/document/schema.ts';
import { driverSize } from '../../driverSize.ts';

// Shares of the outer diameter, or of the depth, where a sheet does not say: common practice, no source. The same as for the cut list.
const CUT_OUT_SHARE = 0.86;
const MAGNET_SHARE = 0.6;
const MAGNET_DEPTH_SHARE = 0.4;
/** Thickness of a frame's rim, which no sheet in the document states. From memory. */
const RIM_M = 0.005;
const UNKNOWN_DEPTH_M = 0.05;

/** A driver cut through its axis: radii at depths under the outer face of the board it sits on, m. */
export interface DriverBody {
  readonly rim: { readonly fromM: number; readonly toM: number; readonly radiusM: number };
  /** Basket and magnet, from the rim to the back, straight between the sections. */
  readonly sections: readonly { readonly depthM: number; readonly radiusM: number }[];
  readonly magnet: { readonly fromM: number; readonly toM: number; readonly radiusM: number };
  readonly moving: { readonly radiusM: number; readonly depthM: number; readonly isDome: boolean };
}

/**
 * The outline of a driver: rim, cut-out, basket narrowing to the magnet, and the magnet at its true depth.
 *
 * `wallM`: thickness of the board; the basket is as wide as the cut-out through it. The depth counts from the underside of the rim.
 * @example driverBody(driver, 0.018).magnet.toM // recess and depth together
 */
export function driverBody(driver: Driver | null, wallM: number): DriverBody {
  const { radiusM, movingRadiusM } = driverSize(driver);
  const fitting = driver?.fitting ?? null;
  const depthM = Math.max(0.002, driver?.depthM ?? UNKNOWN_DEPTH_M);
  const recessM = fitting?.recessDepthM ?? 0;
  const backM = recessM + depthM;
  const cutM = fitting ? fitting.cutOutDiameterM / 2 : CUT_OUT_SHARE * radiusM;
  const magnetM = fitting ? fitting.magnetDiameterM / 2 : MAGNET_SHARE * radiusM;
  const fromM = Math.max(Math.min(wallM, backM), backM - MAGNET_DEPTH_SHARE * depthM);
  const isDome = driver?.shape === 'dome';
  return {
    rim: { fromM: recessM - RIM_M, toM: recessM, radiusM },
    sections: [
      { depthM: recessM, radiusM: cutM },
      { depthM: Math.min(wallM, backM), radiusM: cutM },
      { depthM: fromM, radiusM: magnetM },
      { depthM: backM, radiusM: magnetM },
    ],
    magnet: { fromM, toM: backM, radiusM: magnetM },
    moving: {
      radiusM: Math.min(movingRadiusM, cutM),
      depthM: isDome ? -0.4 * movingRadiusM : Math.min(0.5 * depthM, 0.45 * movingRadiusM + 0.004),
      isDome,
    },
  };
}
