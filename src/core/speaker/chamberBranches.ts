import {
  fibreFluid,
  filledChamberAdmittance,
  wallLiningAdmittance,
  wallLiningVolumeM3,
} from '../acoustics/fill/index.ts';
import { chamberAdmittance, leakAdmittance } from '../acoustics/index.ts';
import { viscousAir } from '../acoustics/viscousAir.ts';
import { type Branch, RETURN } from '../circuit/index.ts';
import type { ModelChamber, SpeakerModel } from './model.ts';
import { airNode, leakBranch, volumeBranch } from './nodeNames.ts';
import { lossVolumeM3, MODEL_TEMPERATURE_C } from './portBranches.ts';

function airOf(chamber: ModelChamber, model: Pick<SpeakerModel, 'air' | 'airTemperatureC'>): Branch[] {
  const nodes = [airNode(chamber.id), RETURN] as const;
  const id = volumeBranch(chamber.id);
  const { filling, absorption } = chamber;
  if (filling === undefined) {
    return [{ kind: 'admittance', id, nodes, admittance: chamberAdmittance(chamber, model.air) }];
  }
  const air = viscousAir(model.air, model.airTemperatureC ?? MODEL_TEMPERATURE_C);
  const { netM3, fill, placing } = filling;
  if (placing.kind === 'stuffed') {
    const { share, depthM } = placing;
    const stuffed = { volumeM3: netM3, fill, share, depthM, held: true, absorption };
    return [{ kind: 'admittance', id, nodes, admittance: filledChamberAdmittance(stuffed, air) }];
  }
  const lining = { areaM2: placing.areaM2, thicknessM: placing.thicknessM, fluid: fibreFluid(fill, true, air) };
  const rest = { volumeM3: netM3 - wallLiningVolumeM3(lining), absorption };
  return [
    { kind: 'admittance', id, nodes, admittance: chamberAdmittance(rest, air) },
    { kind: 'admittance', id: `${chamber.id} lining`, nodes, admittance: wallLiningAdmittance(lining) },
  ];
}

/** The air of a chamber with what is put into it, and its leak, between its node and still air. */
export function chamberBranches(chamber: ModelChamber, model: Pick<SpeakerModel, 'air' | 'airTemperatureC'>): Branch[] {
  const { id, leak } = chamber;
  const branches = airOf(chamber, model);
  if (leak === null) return branches;
  const admittance = leakAdmittance({ volumeM3: lossVolumeM3(chamber), leak }, model.air);
  return [...branches, { kind: 'admittance', id: leakBranch(id), nodes: [airNode(id), RETURN], admittance }];
}
