import { passiveRadiatorAdmittance } from '../acoustics/index.ts';
import { type Branch, RETURN } from '../circuit/index.ts';
import { chamberBranches } from './chamberBranches.ts';
import { keptBranches } from './keptBranches.ts';
import { lineBranches } from './lineBranches.ts';
import type { ModelPassiveRadiator, SpeakerModel } from './model.ts';
import { airNode, radiatorBranch } from './nodeNames.ts';
import { lossVolumeM3, portBranches } from './portBranches.ts';

/** Chambers, leaks, ports, lines and passive radiators as branches. Flow out of a chamber counts as positive. */
export function airBranches(model: SpeakerModel): Branch[] {
  const { densityKgPerM3, soundSpeedMPerS } = model.air;
  const air = [densityKgPerM3, soundSpeedMPerS, model.airTemperatureC];
  const volumes = new Map(model.chambers.map((chamber) => [chamber.id, lossVolumeM3(chamber)]));
  return [
    ...model.chambers.flatMap((chamber) => keptBranches(chamber, air, () => chamberBranches(chamber, model))),
    ...model.ports.flatMap((port) =>
      keptBranches(port, [...air, volumes.get(port.chamberId)], () => portBranches(port, model)),
    ),
    ...(model.lines ?? []).flatMap((line) => keptBranches(line, air, () => lineBranches(line, model))),
    ...model.passiveRadiators.flatMap((radiator) => keptBranches(radiator, [], () => [radiatorBranchOf(radiator)])),
  ];
}

const radiatorBranchOf = (radiator: ModelPassiveRadiator): Branch => ({
  kind: 'admittance',
  id: radiatorBranch(radiator.id),
  nodes: [airNode(radiator.chamberId), RETURN],
  admittance: passiveRadiatorAdmittance(radiator),
});
