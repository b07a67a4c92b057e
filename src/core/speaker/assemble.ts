import { type Branch, partBranches } from '../circuit/index.ts';
import { airBranches } from './airBranches.ts';
import { driverBranches } from './driverBranches.ts';
import { keptBranches } from './keptBranches.ts';
import type { SpeakerModel } from './model.ts';

// One circuit for the whole loudspeaker. Potentials are volts on the electrical side and pascals on the acoustical one,
// currents are amperes and cubic metres a second. With u the cone's velocity, U = Sd u and F = Bl i:
//   v = Ze i + Bl u                 coil, then the motor's voltage (Bl/Sd) U
//   Bl i = Zm u + Sd (pf - pr)      so the motor's pressure (Bl/Sd) i drives Zm/Sd² between the air behind and in front
// which is the coil in series with a gyrator of conductance Sd/Bl, whose other side floats between the air behind the
// cone and the moving parts; those end in the chamber before the cone, or in still air, where the pressure is small.

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
        ...(amplifier.drive && { drive: amplifier.drive }),
      });
    } else if (part.kind === 'speaker') {
      const speaker = model.speakers.find((s) => s.partId === part.id);
      if (speaker === undefined) throw new RangeError(`The model has no speaker ${part.id}.`);
      branches.push(...driverBranches(speaker, part.nodes[0], part.nodes[1]));
    } else {
      branches.push(...keptBranches(part, [], () => partBranches(part)));
    }
  }
  branches.push(...airBranches(model));
  return branches;
}
