import { lossyPipe } from '../acoustics/duct/index.ts';
import { chamberComplianceM3PerPa, portAdmittance, portLossResistancePaSPerM3 } from '../acoustics/index.ts';
import { viscousAir } from '../acoustics/viscousAir.ts';
import { type Branch, RETURN } from '../circuit/index.ts';
import { besideCone } from './driverBranches.ts';
import type { ModelChamber, ModelPort, SpeakerModel } from './model.ts';
import { airNode, mouthNode, portBranch } from './nodeNames.ts';

/** Air at which the viscosity is taken where a model does not say. */
export const MODEL_TEMPERATURE_C = 20;

/** Volume with which stated losses become resistances: what is put in later does not change a tube or a seam. */
export const lossVolumeM3 = ({ volumeM3, filling }: ModelChamber): number => filling?.netM3 ?? volumeM3;

/**
 * A port as branches, from its chamber to the air outside or to another chamber: a mass with its losses, or a pipe with its
 * mouth's radiation load. The branch `portBranch(id)` carries its flow outwards.
 */
export function portBranches(
  port: ModelPort,
  model: Pick<SpeakerModel, 'air' | 'airTemperatureC' | 'chambers'>,
): Branch[] {
  const chamber = model.chambers.find(({ id }) => id === port.chamberId);
  if (chamber === undefined) throw new RangeError(`The model has no chamber ${port.chamberId}.`);
  const inside = airNode(port.chamberId);
  const outside = besideCone(port.toChamberId);
  if (port.pipe !== undefined && outside === RETURN) {
    const compliance = chamberComplianceM3PerPa(lossVolumeM3(chamber), model.air);
    const stated = port.loss ? portLossResistancePaSPerM3(port.loss, compliance) : 0;
    const pipe = lossyPipe(
      {
        ...port.pipe,
        effectiveLengthM: port.effectiveLengthM,
        resistancePaSPerM3: stated + (port.stuffingPaSPerM3 ?? 0),
      },
      viscousAir(model.air, model.airTemperatureC ?? MODEL_TEMPERATURE_C),
    );
    if (pipe !== null) {
      const { between, nearShunt, farShunt } = pipe.duct;
      const mouth = mouthNode(port.id);
      return [
        { kind: 'admittance', id: `${port.id} bore`, nodes: [inside, mouth], admittance: between },
        { kind: 'admittance', id: `${port.id} inner end`, nodes: [inside, RETURN], admittance: nearShunt },
        { kind: 'admittance', id: `${port.id} outer end`, nodes: [mouth, RETURN], admittance: farShunt },
        { kind: 'admittance', id: portBranch(port.id), nodes: [mouth, RETURN], admittance: pipe.mouth },
      ];
    }
  }
  return [
    {
      kind: 'admittance',
      id: portBranch(port.id),
      nodes: [inside, outside],
      admittance: portAdmittance(port, lossVolumeM3(chamber), model.air),
    },
  ];
}
