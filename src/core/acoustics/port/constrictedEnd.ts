/**
 * End correction of a tube that opens into a wider duct of `areaRatio` times its section upwards, in radii: 0.82 (1 − 1.35 √e + 0.31 e^1.5).
 *
 * `areaRatio` e = S/S_box from 0 to 1, the box's inner section at the mouth; for a flush inner end well clear of the wall opposite.
 * Falls from the flanged 0.82 to 0 (the formula's −0.03 at e = 1 is cut off). Low frequencies, concentric; up to e = 0.36 it lies up to
 * 0.035 radii below the series for a piston-like flow, which is an upper bound.
 * Throws a RangeError outside. Source: J. Kergomard, A. Garcia, "Simple discontinuities in acoustic waveguides", J. Sound Vib. 114, 1987,
 * 465 (from memory; other cross-sections fall together on √e).
 *
 * Example: constrictedEndRadii(0.1) = 0.478
 */
export const constrictedEndRadii = (areaRatio: number): number => {
  if (!(areaRatio >= 0 && areaRatio <= 1))
    throw new RangeError(`a bore cannot be ${areaRatio} of the section around it`);
  return Math.max(0, 0.82 * (1 - 1.35 * Math.sqrt(areaRatio) + 0.31 * areaRatio ** 1.5));
};
