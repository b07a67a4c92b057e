import { type PortShape, portSectionM2 } from './portShape.ts';

/**
 * Room that a port's inner end needs before the wall that faces it, m, by the circle of equal area of radius a.
 *
 * `leastM` a/2: below it the gap round the mouth, 2πa g, is narrower than the bore itself. `wishedM` 2a: common practice, no source.
 *
 * Example: 100 mm tube: 25 mm at least, 100 mm wished
 */
export const endClearance = (shape: PortShape): { readonly leastM: number; readonly wishedM: number } => {
  const radiusM = Math.sqrt(portSectionM2(shape) / Math.PI);
  return { leastM: radiusM / 2, wishedM: 2 * radiusM };
};
