import type { Brace, Chamber, Enclosure } from './schema.ts';

export type PanelName = 'front' | 'back' | 'left' | 'right' | 'top' | 'bottom';
type Walls = Pick<Enclosure, 'widthM' | 'heightM' | 'depthM' | 'panelM' | 'wood'>;

/** Thickness of one panel of the cabinet, m. */
export const thicknessOfM = ({ panelM, wood }: Pick<Enclosure, 'panelM' | 'wood'>, panel: PanelName): number =>
  wood[`${panel}M`] ?? panelM;

/** Tangent of the front's lean. */
const leanOf = ({ wood }: Walls): number => Math.tan((wood.frontLeanDeg * Math.PI) / 180);

/** A panel that stands askew takes more room along the level than it is thick. */
const askew = (thicknessM: number, tangent: number): number => thicknessM * Math.hypot(1, tangent);

/** Depth of the front plane behind the cabinet's foremost edge at a height: 0 for an upright front. */
export const frontSetbackM = (enclosure: Walls, yM: number): number => leanOf(enclosure) * yM;

/** Clear depth from front to back at a height, m; never below 0. */
export function clearDepthM(enclosure: Walls, yM: number): number {
  const front = askew(thicknessOfM(enclosure, 'front'), leanOf(enclosure));
  return Math.max(0, enclosure.depthM - frontSetbackM(enclosure, yM) - front - thicknessOfM(enclosure, 'back'));
}

/** Clear width at a depth behind the foremost edge, m; never below 0. */
export function clearWidthM(enclosure: Walls, behindM: number): number {
  const { widthM, depthM, wood } = enclosure;
  const narrows = widthM - (wood.backWidthM ?? widthM);
  const tangent = narrows / 2 / depthM;
  const sides = askew(thicknessOfM(enclosure, 'left'), tangent) + askew(thicknessOfM(enclosure, 'right'), tangent);
  return Math.max(0, widthM - (narrows * behindM) / depthM - sides);
}

/** Heights between which there is air, m. */
export const clearHeights = (enclosure: Walls): { readonly bottomM: number; readonly topM: number } => ({
  bottomM: thicknessOfM(enclosure, 'bottom'),
  topM: enclosure.heightM - thicknessOfM(enclosure, 'top'),
});

/**
 * Air between two heights (from the outer bottom) across the clear width, to `depthM` behind the front's inner face (null: to the back), m³.
 *
 * Exact for a box, for a leaning front and for sides that draw together, alone or both: width is linear in depth, depth in height.
 * Where `depthM` reaches the back at some heights only it is within 1 %.
 */
export function spaceBetweenM3(enclosure: Walls, bottomM: number, topM: number, depthM: number | null): number {
  if (!(topM > bottomM)) return 0;
  // Linear in one direction times linear in the other: two points of Gauss are exact for third powers, which do not occur.
  const half = (topM - bottomM) / 2;
  const middle = (topM + bottomM) / 2;
  const at = (yM: number): number => sliceM2(enclosure, yM, depthM);
  return half * (at(middle - half / Math.sqrt(3)) + at(middle + half / Math.sqrt(3)));
}

/** Area of the level cut through the air at a height, m². */
export function sliceM2(enclosure: Walls, yM: number, depthM: number | null): number {
  const clear = clearDepthM(enclosure, yM);
  const depth = Math.min(depthM ?? clear, clear);
  const from = frontSetbackM(enclosure, yM) + askew(thicknessOfM(enclosure, 'front'), leanOf(enclosure));
  return depth * clearWidthM(enclosure, from + depth / 2);
}

/** Heights of a chamber that is given by its bounds, inside the cabinet's own panels. */
export function chamberHeights(
  chamber: Chamber,
  enclosure: Walls,
): { readonly bottomM: number; readonly topM: number } {
  const clear = clearHeights(enclosure);
  if (chamber.volume.kind === 'stated') return clear;
  return {
    bottomM: Math.max(chamber.volume.bottomM, clear.bottomM),
    topM: Math.min(chamber.volume.topM, clear.topM),
  };
}

/**
 * Wood of a brace, m³: it spans its chamber in both directions, less its openings. Lengthwise and across ones take the chamber's
 * middle width and depth; in a chamber of stated size, those of the cabinet.
 */
export function braceVolumeM3(brace: Brace, chamber: Chamber, enclosure: Walls): number {
  const { bottomM, topM } = chamberHeights(chamber, enclosure);
  const depthM = chamber.volume.kind === 'geometry' ? chamber.volume.depthM : null;
  const solid = brace.thicknessM * (1 - brace.openShare);
  if (brace.lies === 'level') return solid * sliceM2(enclosure, brace.atM, depthM);
  if (brace.lies === 'across') {
    // A leaning front cuts it off where it would stand before the front's inner face; nothing stands in the back.
    const reach = brace.atM - askew(thicknessOfM(enclosure, 'front'), leanOf(enclosure));
    const lean = leanOf(enclosure);
    const highestM = lean > 0 ? Math.min(topM, reach / lean) : reach >= 0 ? topM : bottomM;
    const inside = brace.atM <= enclosure.depthM - thicknessOfM(enclosure, 'back');
    return inside ? solid * clearWidthM(enclosure, brace.atM) * Math.max(0, highestM - bottomM) : 0;
  }
  const clear = clearDepthM(enclosure, (bottomM + topM) / 2);
  return solid * Math.min(depthM ?? clear, clear) * Math.max(0, topM - bottomM);
}
