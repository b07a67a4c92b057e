const GOLDEN = (1 + Math.sqrt(5)) / 2;

/** Ratios of width, height and depth that builders use so that no two sizes are multiples. Common practice, no source. */
export const PROPORTIONS = [
  { id: 'golden', ratio: [1, GOLDEN, 1 / GOLDEN] },
  { id: 'cube-roots', ratio: [1, 2 ** (1 / 3), 2 ** (-1 / 3)] },
] as const;

/**
 * Inner sizes with this volume in these ratios, m. A suggestion only. Throws where volume or ratio are not above zero.
 *
 * Example: proportionsFor(0.02, [1, 2, 1]) gives 0.2154, 0.4309 and 0.2154 m.
 */
export function proportionsFor(volumeM3: number, ratio: readonly [width: number, height: number, depth: number]) {
  const [w, h, d] = ratio;
  if (!(volumeM3 > 0 && w > 0 && h > 0 && d > 0)) throw new RangeError(`No sizes for ${volumeM3} m³ in ${ratio}.`);
  const unitM = Math.cbrt(volumeM3 / (w * h * d));
  return { widthM: w * unitM, heightM: h * unitM, depthM: d * unitM };
}
