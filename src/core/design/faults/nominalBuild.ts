import { voiceCoilAdmittance } from '../../acoustics/index.ts';
import { type Result, succeed } from '../../messages/problem.ts';
import { airBranches } from '../../speaker/airBranches.ts';
import { correctionBranches } from '../../speaker/measuredImpedance.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { portBranch, tableBranch } from '../../speaker/nodeNames.ts';
import type { AirBranch, Build, BuiltDriver, Row } from './build.ts';
import { reachableFrom } from './reachableFrom.ts';

/**
 * The design as it should have been built, seen from one amplifier channel whose amplifier is taken off; other channels are unplugged.
 *
 * `omegas`: rad/s, ascending. Problems: those of a driver whose measured impedance cannot be used.
 * @example nominalBuild(model, 'V1', omegas)
 */
export function nominalBuild(model: SpeakerModel, amplifierId: string, omegas: Float64Array): Result<Build> {
  const amplifier = model.parts.find(({ id }) => id === amplifierId);
  if (amplifier?.kind !== 'amplifier') throw new RangeError(`The model has no amplifier ${amplifierId}.`);
  const corrections = correctionBranches(model, omegas);
  if (!corrections.ok) return corrections;
  const reached = reachableFrom(model.parts, amplifier.nodes[0]);
  const parts = model.parts.filter(({ id, kind }) => kind !== 'amplifier' && kind !== 'speaker' && reached.has(id));
  const drivers = model.parts.flatMap((part): BuiltDriver[] => {
    if (part.kind !== 'speaker') return [];
    const speaker = model.speakers.find(({ partId }) => partId === part.id);
    if (speaker === undefined) throw new RangeError(`The model has no speaker ${part.id}.`);
    const coil = row(omegas);
    const { reOhm } = speaker.parameters;
    voiceCoilAdmittance(speaker.parameters)(omegas, coil.re, coil.im);
    for (let f = 0; f < omegas.length; f++) {
      const a = coil.re[f]!;
      const b = coil.im[f]!;
      const squared = a * a + b * b;
      coil.re[f] = a / squared - reOhm;
      coil.im[f] = -b / squared;
    }
    const correction = corrections.value.find(({ id }) => id === tableBranch(part.id));
    const added = correction?.kind === 'admittance' ? row(omegas) : null;
    if (added !== null && correction?.kind === 'admittance') correction.admittance(omegas, added.re, added.im);
    return [{ partId: part.id, nodes: part.nodes, speaker, isOpen: !reached.has(part.id), coil, added }];
  });
  const ports = new Set(model.ports.map(({ id }) => portBranch(id)));
  const air = airBranches(model).flatMap((branch): AirBranch[] => {
    if (branch.kind !== 'admittance') return [];
    const admittance = row(omegas);
    branch.admittance(omegas, admittance.re, admittance.im);
    const scales = ports.has(branch.id) ? ('reactance' as const) : ('admittance' as const);
    return [{ id: branch.id, nodes: branch.nodes, admittance, scales, isBlocked: false }];
  });
  return succeed({
    omegas,
    terminals: amplifier.nodes,
    parts: parts.map((part) => ({ part, state: 'whole' as const })),
    drivers,
    air,
    leaks: [],
    cableOhm: 0,
  });
}

const row = ({ length }: Float64Array): Row => ({ re: new Float64Array(length), im: new Float64Array(length) });
