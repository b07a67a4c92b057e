import { meanInverseDistancePerM } from './meanInverseDistance.ts';
import { type PortShape, portSectionM2 } from './portShape.ts';

/**
 * What equal ports beside it, breathing in step in the same panel, add to one end of a port, m: S/(2π) Σ <1/R>.
 *
 * `centreDistancesM` to each of the others. Slots count as circles of equal area.
 * Source: U. Ingard, "On the theory and design of acoustic resonators", J. Acoust. Soc. Am. 25, 1953, 1037 (class of
 * result, from memory); mean derived here.
 *
 * Example: two 70 mm ports 110 mm apart: 5.7 mm each.
 */
export const neighbourExtensionM = (shape: PortShape, centreDistancesM: readonly number[]): number => {
  const sectionM2 = portSectionM2(shape);
  const radiusM = Math.sqrt(sectionM2 / Math.PI);
  return centreDistancesM.reduce(
    (sum, distanceM) => sum + (sectionM2 / (2 * Math.PI)) * meanInverseDistancePerM(radiusM, distanceM),
    0,
  );
};

/** Mass that one port's air has for the flow of another in the same panel, kg/m⁴: ρ/(2π) <1/R>. Source: as `neighbourExtensionM`. */
export const mutualMassKgPerM4 = (radiusM: number, distanceM: number, densityKgPerM3: number): number =>
  (densityKgPerM3 / (2 * Math.PI)) * meanInverseDistancePerM(radiusM, distanceM);

/**
 * What a wall at right angles to the panel adds to an end whose centre is `distanceM` from it, m: the port's own image at 2h.
 *
 * Source: image method; as `neighbourExtensionM`.
 */
export const besideWallExtensionM = (shape: PortShape, distanceM: number): number =>
  neighbourExtensionM(shape, [2 * distanceM]);

/**
 * The same for a group of equal ports by their centres in the panel (m), as the mean over the group.
 *
 * The ports share the flow equally, which holds to second order where they do not stand alike. One port: 0.
 *
 * Example: three 50 mm ports in a row, 80 mm apart: 6.7 mm
 */
export const groupExtensionM = (
  shape: PortShape,
  centres: readonly { readonly xM: number; readonly yM: number }[],
): number => {
  const each = centres.map((here, i) =>
    neighbourExtensionM(
      shape,
      centres.flatMap((there, k) => (k === i ? [] : [Math.hypot(here.xM - there.xM, here.yM - there.yM)])),
    ),
  );
  return each.length === 0 ? 0 : each.reduce((sum, extension) => sum + extension, 0) / each.length;
};
