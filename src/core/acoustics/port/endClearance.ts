import { type PortShape, portSectionM2 } from './portShape.ts';

/**
 * Room that a port's inner end needs before the wall that faces it, m. `leastM`: below it the gap through which the air turns is
 * narrower than the bore, S over the length of rim that is open; a round rim is open all round (a/2), a slot's along `openRimM`, its longer
 * side where it shares its other walls with the cabinet. `wishedM`: a whole diameter, or a slot's lesser side (common practice, no source).
 *
 * Example: 100 mm tube: 25 mm at least, 100 mm wished; slot of 200 × 24 mm along the floor: 24 mm
 */
export const endClearance = (
  shape: PortShape,
  openRimM?: number,
): { readonly leastM: number; readonly wishedM: number } => {
  if (shape.kind === 'round') return { leastM: shape.diameterM / 4, wishedM: shape.diameterM };
  const lesserM = Math.min(shape.widthM, shape.heightM);
  return { leastM: portSectionM2(shape) / (openRimM ?? Math.max(shape.widthM, shape.heightM)), wishedM: lesserM };
};
