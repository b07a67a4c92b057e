import { outerRadiusM, type WindingSection } from '../winding/windingSection.ts';

/** A distance given in outer diameters of a coil, m: the measure that makes coils of one shape alike. */
export const outerDiametersM = (section: WindingSection, diameters: number): number =>
  2 * outerRadiusM(section) * diameters;
