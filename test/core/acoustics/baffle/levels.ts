import { baffleFactorInto, type CabinetBox, edgePaths } from '../../../../src/core/acoustics/index.ts';

/** Speed of sound of the cases, m/s. */
export const C = 343.2;
/** The cabinet of the boundary-element table. */
export const BOX = { widthM: 0.2, heightM: 0.3, depthM: 0.2 };

/** Levels re the free field (dB) of a piston at a place on the front, in a direction from it; half space is 6.02 dB above. */
export const levelsDb = (
  box: CabinetBox,
  source: { readonly xM: number; readonly yM: number },
  pistonRadiusM: number,
  towards: { readonly horizontalDeg?: number; readonly verticalDeg?: number; readonly distanceM: number },
  frequenciesHz: readonly number[],
): number[] => {
  const h = ((towards.horizontalDeg ?? 0) * Math.PI) / 180;
  const v = ((towards.verticalDeg ?? 0) * Math.PI) / 180;
  const listener = {
    xM: source.xM + towards.distanceM * Math.sin(h) * Math.cos(v),
    yM: source.yM + towards.distanceM * Math.sin(v),
    zM: towards.distanceM * Math.cos(h) * Math.cos(v),
  };
  const omegas = Float64Array.from(frequenciesHz, (f) => 2 * Math.PI * f);
  const out = { re: new Float64Array(omegas.length), im: new Float64Array(omegas.length) };
  const offAxisDeg = (Math.acos(listener.zM / towards.distanceM) * 180) / Math.PI;
  baffleFactorInto(out, edgePaths(box, source, listener), { pistonRadiusM, offAxisDeg }, omegas, C);
  return frequenciesHz.map((_, i) => 20 * Math.log10(2 * Math.hypot(out.re[i]!, out.im[i]!)));
};
