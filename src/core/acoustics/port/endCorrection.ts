import { meanInverseDistancePerM } from './meanInverseDistance.ts';
import { FLANGED_END_RADII, FREE_END_RADII } from './openEndFactors.ts';
import { type PortEnd, type PortShape, portSectionM2 } from './portShape.ts';
import { rectangularEndCorrectionM } from './rectangularEndCorrection.ts';

/**
 * Length that the air outside one end adds to a port, m.
 *
 * Round: 0.6127 r free, 0.8217 r flanged. Slot: the closed form for a flanged rectangle; free, that times 0.6127/0.8217 (our
 * estimate: no closed form is known). On a wall: the wall is a mirror, so a slot counts as one of twice the height, a tube as two
 * that touch. Low frequencies (mouth small against the wavelength), sharp edges, no flare. Choices differ by about 3 % in tuning.
 * Sources: `openEndFactors`, `rectangularEndCorrectionM`, `meanInverseDistancePerM`; image method.
 *
 * Example: endCorrectionM({ kind: 'round', diameterM: 0.07 }, 'free') = 0.02144
 */
export const endCorrectionM = (shape: PortShape, end: PortEnd): number => {
  if (shape.kind === 'round') {
    const radiusM = shape.diameterM / 2;
    if (end === 'free') return FREE_END_RADII * radiusM;
    const flangedM = FLANGED_END_RADII * radiusM;
    return end === 'flanged' ? flangedM : flangedM + neighbourExtensionM(shape, [2 * radiusM]);
  }
  const { widthM, heightM } = shape;
  if (end === 'on-wall') return rectangularEndCorrectionM(Math.max(widthM, heightM), 2 * Math.min(widthM, heightM));
  const flangedM = rectangularEndCorrectionM(widthM, heightM);
  return end === 'flanged' ? flangedM : (flangedM * FREE_END_RADII) / FLANGED_END_RADII;
};

/**
 * What equal ports beside it, breathing in step in the same panel, add to one end of a port, m: S/(2π) Σ <1/R>.
 *
 * `centreDistancesM` to each of the others. Slots count as circles of equal area. A wall at distance h beside the mouth acts as a
 * port at 2h. Source: U. Ingard, "On the theory and design of acoustic resonators", J. Acoust. Soc. Am. 25, 1953, 1037 (class of
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
