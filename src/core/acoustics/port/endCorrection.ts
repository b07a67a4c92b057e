import { neighbourExtensionM } from './neighbourExtension.ts';
import { FLANGED_END_RADII, FREE_END_RADII } from './openEndFactors.ts';
import type { PortEnd, PortShape } from './portShape.ts';
import { rectangularEndCorrectionM } from './rectangularEndCorrection.ts';

/**
 * Length that the air outside one end adds to a port, m.
 *
 * Round: 0.6127 r free, 0.8217 r flanged. Slot: the closed form for a flanged rectangle; free, that times 0.6127/0.8217 (our
 * estimate: no closed form is known). On a wall: the wall is a mirror, so a slot counts as one of twice the height, a tube as two
 * that touch; in a corner: mirrored both ways, a slot of twice the height and twice the width, a tube as four.
 * Low frequencies (mouth small against the wavelength), sharp edges, no flare. Choices differ by about 3 % in tuning.
 * Sources: `openEndFactors`, `rectangularEndCorrectionM`, `meanInverseDistancePerM`; image method.
 *
 * Example: endCorrectionM({ kind: 'round', diameterM: 0.07 }, 'free') = 0.02144
 */
export const endCorrectionM = (shape: PortShape, end: PortEnd): number => {
  if (shape.kind === 'round') {
    const { diameterM } = shape;
    const radiusM = diameterM / 2;
    if (end === 'free') return FREE_END_RADII * radiusM;
    const flangedM = FLANGED_END_RADII * radiusM;
    if (end === 'flanged') return flangedM;
    const images = end === 'on-wall' ? [diameterM] : [diameterM, diameterM, Math.SQRT2 * diameterM];
    return flangedM + neighbourExtensionM(shape, images);
  }
  const { widthM, heightM } = shape;
  if (end === 'in-corner') return rectangularEndCorrectionM(2 * widthM, 2 * heightM);
  if (end === 'on-wall') return rectangularEndCorrectionM(Math.max(widthM, heightM), 2 * Math.min(widthM, heightM));
  const flangedM = rectangularEndCorrectionM(widthM, heightM);
  return end === 'flanged' ? flangedM : (flangedM * FREE_END_RADII) / FLANGED_END_RADII;
};
