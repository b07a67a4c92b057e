import { constrictedEndRadii } from './constrictedEnd.ts';
import { endCorrectionM } from './endCorrection.ts';
import { neighbourExtensionM } from './neighbourExtension.ts';
import { bendCorrectionM } from './portBend.ts';
import { flareBoreLengthM, flaredMouth } from './portFlare.ts';
import { type PortEnd, type PortShape, portSectionM2 } from './portShape.ts';

export interface PortGeometry {
  readonly shape: PortShape;
  /** Along the centre line, flares included. */
  readonly lengthM: number;
  readonly innerEnd: PortEnd;
  readonly outerEnd: PortEnd;
  /** Radius of the quarter-round at each end; absent or 0: a sharp edge. It lies within the length. */
  readonly innerFlareM?: number;
  readonly outerFlareM?: number;
  /** Right-angled bends; absent: none. */
  readonly bends?: number;
  /** Inner section of the chamber where a flush inner end opens into it, m² (below the mouth's: counts as equal); absent: wide. */
  readonly chamberSectionM2?: number;
}

/** What the length of a port cannot go below: its flares, one after the other, m. */
export const portFlaresM = (port: Pick<PortGeometry, 'innerFlareM' | 'outerFlareM'>): number =>
  (port.innerFlareM ?? 0) + (port.outerFlareM ?? 0);

/**
 * The air outside one end, and what a flare there takes off, as a length of bore, m.
 *
 * The end correction is that of the mouth; its air moves slower by the mouth's area, so it counts for less bore.
 */
const oneEndM = (shape: PortShape, end: PortEnd, flareM: number, chamberSectionM2: number | undefined): number => {
  const mouth = flaredMouth(shape, end, flareM);
  const mouthM2 = portSectionM2(mouth);
  const constricted = end === 'flanged' && chamberSectionM2 !== undefined;
  const outsideM = constricted
    ? constrictedEndRadii(Math.min(mouthM2 / chamberSectionM2, 1)) * Math.sqrt(mouthM2 / Math.PI)
    : endCorrectionM(mouth, end);
  return (outsideM * portSectionM2(shape)) / mouthM2 + flareBoreLengthM(shape, end, flareM) - flareM;
};

/**
 * What both ends of a port, its flares and bends, and equal ports beside it at its outer end, add to its length, m.
 *
 * Sources and errors: `endCorrectionM`, `flareBoreLengthM`, `bendCorrectionM`, `constrictedEndRadii`, `neighbourExtensionM`.
 */
export const portEndCorrectionsM = (
  port: Omit<PortGeometry, 'lengthM'>,
  neighbourDistancesM: readonly number[] = [],
): number =>
  oneEndM(port.shape, port.innerEnd, port.innerFlareM ?? 0, port.chamberSectionM2) +
  oneEndM(port.shape, port.outerEnd, port.outerFlareM ?? 0, undefined) +
  (port.bends ? port.bends * bendCorrectionM(port.shape) : 0) +
  neighbourExtensionM(port.shape, neighbourDistancesM);

/**
 * Acoustic length of a port: its own and both end corrections, m, as a length of its straight bore.
 *
 * `neighbourDistancesM`: centre distances to equal ports in the same panel (they share their outer air); none when left out.
 * Range and sources: `portEndCorrectionsM`.
 *
 * Example: a tube of 70 mm bore, 0.2 m long, flanged outside and free inside: 0.2502 m.
 */
export const portEffectiveLengthM = (port: PortGeometry, neighbourDistancesM: readonly number[] = []): number =>
  port.lengthM + portEndCorrectionsM(port, neighbourDistancesM);
