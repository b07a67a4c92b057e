import { fail, problem, succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';

/** Curves of drivers that only this state still had go with it. */
export const dropState: Applier<'drop-state'> = (project, { id }) => {
  const snapshots = project.snapshots.filter((state) => state.id !== id);
  if (snapshots.length === project.snapshots.length) {
    return fail(problem('document.unknown-state', { kind: 'document', id }));
  }
  const owners = new Set([...project.drivers, ...snapshots.flatMap((state) => state.drivers)].map(({ id }) => id));
  const owned = project.curves.filter(({ belongsTo }) => belongsTo.kind !== 'driver' || owners.has(belongsTo.driverId));
  return succeed({ ...project, snapshots, curves: owned.length === project.curves.length ? project.curves : owned });
};
