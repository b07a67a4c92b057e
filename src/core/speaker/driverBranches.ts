import { movingPartsAdmittance, voiceCoilAdmittance } from '../acoustics/index.ts';
import { type Branch, RETURN } from '../circuit/index.ts';
import type { ModelSpeaker } from './model.ts';
import { airNode, coilBranch, coneNode, emfNode, gyratorBranch, movingBranch } from './nodeNames.ts';

/** Node of the air on one side of a cone. */
export const besideCone = (chamberId: string | null | undefined): string => (chamberId ? airNode(chamberId) : RETURN);

/** A driver as branches: coil, motor, moving parts, between the air behind and the air in front. `plus` and `minus` are its terminals. */
export function driverBranches(speaker: ModelSpeaker, plus: string, minus: string): Branch[] {
  const { partId, parameters } = speaker;
  return [
    {
      kind: 'admittance',
      id: coilBranch(partId),
      nodes: [plus, emfNode(partId)],
      admittance: voiceCoilAdmittance(parameters),
    },
    {
      kind: 'gyrator',
      id: gyratorBranch(partId),
      primary: [emfNode(partId), minus],
      secondary: [coneNode(partId), besideCone(speaker.chamberId)],
      gyrationS: parameters.sdM2 / parameters.blTm,
    },
    {
      kind: 'admittance',
      id: movingBranch(partId),
      nodes: [coneNode(partId), besideCone(speaker.frontChamberId)],
      admittance: movingPartsAdmittance(parameters),
    },
  ];
}
