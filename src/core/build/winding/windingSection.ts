/** The rectangle that a winding fills, and its turns: mean radius, length along the axis and depth of the winding, m. */
export interface WindingSection {
  readonly meanRadiusM: number;
  readonly lengthM: number;
  readonly depthM: number;
  readonly turns: number;
}

export const innerRadiusM = ({ meanRadiusM, depthM }: WindingSection): number => meanRadiusM - depthM / 2;
export const outerRadiusM = ({ meanRadiusM, depthM }: WindingSection): number => meanRadiusM + depthM / 2;
/** Length of the wire of all turns, m. */
export const wireLengthM = ({ meanRadiusM, turns }: WindingSection): number => 2 * Math.PI * meanRadiusM * turns;

/**
 * Resistance of a winding to direct current, ohm: ρ 2π a N/A, wire of bare diameter `wireM` (m).
 * @example sectionOhm(brooksSection(0.012, 200), 0.8e-3, 1.724e-8)
 */
export const sectionOhm = (section: WindingSection, wireM: number, resistivityOhmM: number): number =>
  (resistivityOhmM * wireLengthM(section)) / ((Math.PI * wireM ** 2) / 4);
