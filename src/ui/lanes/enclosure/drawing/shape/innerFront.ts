import { clearDepthM, thicknessOfM } from '../../../../../core/document/insideSpace.ts';
import type { Enclosure } from '../../../../../core/document/schema.ts';

/** Depth of the front panel's inner face behind the cabinet's foremost edge at a height, m. */
export const innerFrontM = (enclosure: Enclosure, yM: number): number =>
  enclosure.depthM - thicknessOfM(enclosure, 'back') - clearDepthM(enclosure, yM);
