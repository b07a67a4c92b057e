import {
  chamberAdmittance,
  leakAdmittance,
  movingPartsAdmittance,
  passiveRadiatorAdmittance,
  portAdmittance,
  voiceCoilAdmittance,
} from '../acoustics/index.ts';
import { type Branch, type Part, partBranches, RETURN } from '../circuit/index.ts';
import type { ModelSpeaker, SpeakerModel } from './model.ts';
import {
  airNode,
  coilBranch,
  coneNode,
  emfNode,
  gyratorBranch,
  leakBranch,
  movingBranch,
  portBranch,
  radiatorBranch,
  volumeBranch,
} from './nodeNames.ts';

// One circuit for the whole loudspeaker. Potentials are volts on the electrical side and pascals on the acoustical one,
// currents are amperes and cubic metres a second. With u the cone's velocity, U = Sd u and F = Bl i:
//   v = Ze i + Bl u                 coil, then the motor's voltage (Bl/Sd) U
//   Bl i = Zm u + Sd (pf - pr)      so the motor's pressure (Bl/Sd) i drives Zm/Sd² between the air behind and in front
// which is the coil in series with a gyrator of conductance Sd/Bl, whose other side floats between the air behind the
// cone and the moving parts; those end in still air, where the pressure is small against the chamber's.

/** A driver as branches: coil, motor, moving parts. `plus` and `minus` are its terminals. */
export function driverBranches(speaker: ModelSpeaker, plus: string, minus: string): Branch[] {
  const { partId, parameters, chamberId } = speaker;
  const behind = chamberId === null ? RETURN : airNode(chamberId);
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
      secondary: [coneNode(partId), behind],
      gyrationS: parameters.sdM2 / parameters.blTm,
    },
    {
      kind: 'admittance',
      id: movingBranch(partId),
      nodes: [coneNode(partId), RETURN],
      admittance: movingPartsAdmittance(parameters),
    },
  ];
}

/** Chambers, ports and passive radiators as branches. Flow out of the cabinet counts as positive. */
export function airBranches(model: SpeakerModel): Branch[] {
  const { air } = model;
  const branches: Branch[] = [];
  for (const chamber of model.chambers) {
    const node = airNode(chamber.id);
    branches.push({
      kind: 'admittance',
      id: volumeBranch(chamber.id),
      nodes: [node, RETURN],
      admittance: chamberAdmittance(chamber, air),
    });
    const { leak } = chamber;
    if (leak !== null) {
      const admittance = leakAdmittance({ volumeM3: chamber.volumeM3, leak }, air);
      branches.push({ kind: 'admittance', id: leakBranch(chamber.id), nodes: [node, RETURN], admittance });
    }
  }
  const volumeOf = (chamberId: string): number => {
    const chamber = model.chambers.find((c) => c.id === chamberId);
    if (chamber === undefined) throw new RangeError(`The model has no chamber ${chamberId}.`);
    return chamber.volumeM3;
  };
  for (const port of model.ports) {
    const admittance = portAdmittance(port, volumeOf(port.chamberId), air);
    branches.push({
      kind: 'admittance',
      id: portBranch(port.id),
      nodes: [airNode(port.chamberId), RETURN],
      admittance,
    });
  }
  for (const radiator of model.passiveRadiators) {
    branches.push({
      kind: 'admittance',
      id: radiatorBranch(radiator.id),
      nodes: [airNode(radiator.chamberId), RETURN],
      admittance: passiveRadiatorAdmittance(radiator),
    });
  }
  return branches;
}

const kept = new WeakMap<Part, readonly Branch[]>();

/** Branches of a part, the same objects for the same part, so that their tables can be taken over. */
function keptBranches(part: Part): readonly Branch[] {
  const known = kept.get(part) ?? partBranches(part);
  kept.set(part, known);
  return known;
}

/**
 * The whole loudspeaker as branches of one circuit: amplifiers, crossover, drivers, air.
 *
 * Every speaker part of the network needs its entry in `model.speakers`; own mistakes throw.
 * @example compileCircuit(assembleCircuit(model))
 */
export function assembleCircuit(model: SpeakerModel): Branch[] {
  const branches: Branch[] = [];
  for (const part of model.parts) {
    if (part.kind === 'amplifier') {
      const amplifier = model.amplifiers.find((a) => a.id === part.id);
      if (amplifier === undefined) throw new RangeError(`The model has no amplifier ${part.id}.`);
      branches.push({
        kind: 'source',
        id: part.id,
        nodes: part.nodes,
        voltageV: amplifier.voltageV,
        resistanceOhm: amplifier.resistanceOhm,
      });
    } else if (part.kind === 'speaker') {
      const speaker = model.speakers.find((s) => s.partId === part.id);
      if (speaker === undefined) throw new RangeError(`The model has no speaker ${part.id}.`);
      branches.push(...driverBranches(speaker, part.nodes[0], part.nodes[1]));
    } else {
      branches.push(...keptBranches(part));
    }
  }
  branches.push(...airBranches(model));
  return branches;
}
