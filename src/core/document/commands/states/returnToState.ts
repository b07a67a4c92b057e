import { fail, problem, succeed } from '../../../messages/problem.ts';
import { designOf } from '../../design.ts';
import type { Applier } from '../applier.ts';
import { withChanges } from '../withChanges.ts';

/** Drivers of the present that own curves and are not in the kept state stay, without a speaker, so no curve is lost. */
export const returnToState: Applier<'return-to-state'> = (project, { id }) => {
  const state = project.snapshots.find((candidate) => candidate.id === id);
  if (!state) return fail(problem('document.unknown-state', { kind: 'document', id }));
  const known = new Set([state, ...project.snapshots].flatMap(({ drivers }) => drivers.map((driver) => driver.id)));
  const owners = new Set(
    project.curves.flatMap(({ belongsTo }) => (belongsTo.kind === 'driver' ? [belongsTo.driverId] : [])),
  );
  const orphans = project.drivers.filter((driver) => owners.has(driver.id) && !known.has(driver.id));
  const drivers = orphans.length > 0 ? [...state.drivers, ...orphans] : state.drivers;
  return succeed(withChanges(project, { ...designOf(state), drivers }));
};
