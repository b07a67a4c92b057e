import { endCorrectionM, neighbourExtensionM } from './endCorrection.ts';
import type { PortEnd, PortShape } from './portShape.ts';

export interface PortGeometry {
  readonly shape: PortShape;
  readonly lengthM: number;
  readonly innerEnd: PortEnd;
  readonly outerEnd: PortEnd;
}

/** What both ends of a port, and equal ports beside it at its outer end, add to its length, m. */
export const portEndCorrectionsM = (
  port: Omit<PortGeometry, 'lengthM'>,
  neighbourDistancesM: readonly number[] = [],
): number =>
  endCorrectionM(port.shape, port.innerEnd) +
  endCorrectionM(port.shape, port.outerEnd) +
  neighbourExtensionM(port.shape, neighbourDistancesM);

/**
 * Acoustic length of a port: its own and both end corrections, m.
 *
 * `neighbourDistancesM`: centre distances to equal ports in the same panel (they share their outer air); none when left out.
 * Range and sources: `endCorrectionM`.
 *
 * Example: a tube of 70 mm bore, 0.2 m long, flanged outside and free inside: 0.2502 m.
 */
export const portEffectiveLengthM = (port: PortGeometry, neighbourDistancesM: readonly number[] = []): number =>
  port.lengthM + portEndCorrectionsM(port, neighbourDistancesM);
