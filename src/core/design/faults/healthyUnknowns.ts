import type { Part } from '../../circuit/part.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { leakBranch, portBranch, volumeBranch } from '../../speaker/nodeNames.ts';
import type { Build } from './build.ts';
import type { FaultTolerances } from './faultTolerances.ts';
import type { PartValue, Unknown } from './unknown.ts';

/** The value that a part is known by. */
export const mainValue = (part: Part): PartValue | null => {
  if (part.kind === 'resistor') return 'ohm';
  if (part.kind === 'capacitor') return 'farad';
  return part.kind === 'inductor' ? 'henry' : null;
};

/** All that strays in a healthy build of a design, each value with its spread. */
export function healthyUnknowns(model: SpeakerModel, build: Build, tolerances: FaultTolerances): Unknown[] {
  const spread = (limit: number): number => Math.max(1e-4, limit) / Math.sqrt(3);
  const unknowns: Unknown[] = [];
  for (const { part } of build.parts) {
    const name = mainValue(part);
    if (name === null) continue;
    const limit = tolerances.ofParts.get(part.id) ?? tolerances.part;
    unknowns.push({ kind: 'part', partId: part.id, name, sdLog: spread(limit) });
    if (part.kind !== 'inductor' || part.dcrOhm === 0) continue;
    unknowns.push({ kind: 'part', partId: part.id, name: 'dcrOhm', sdLog: spread(tolerances.winding) });
  }
  for (const { partId } of build.drivers) {
    const of = (name: (Unknown & { kind: 'driver' })['name'], limit: number): void => {
      unknowns.push({ kind: 'driver', partId, name, sdLog: spread(limit) });
    };
    of('resistance', tolerances.coilResistance);
    of('inductance', tolerances.coilInductance);
    // The resonance goes with one over the root of the compliance.
    of('compliance', 2 * tolerances.resonance);
    of('loss', tolerances.mechanicalLoss);
    of('motor', tolerances.motor);
  }
  const known = new Set(build.air.map(({ id }) => id));
  const air = (branchId: string, limit: number): void => {
    if (known.has(branchId)) unknowns.push({ kind: 'air', branchId, sdLog: spread(limit) });
  };
  for (const { id } of model.chambers) {
    air(volumeBranch(id), tolerances.chamberVolume);
    air(leakBranch(id), tolerances.leak);
  }
  for (const { id } of model.ports) air(portBranch(id), tolerances.portLength);
  return unknowns;
}
