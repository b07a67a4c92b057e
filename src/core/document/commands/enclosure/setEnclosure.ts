import { succeed } from '../../../messages/problem.ts';
import type { Chamber, Enclosure } from '../../schema.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';

/** Bounds of a chamber that lie on the cabinet's own panels move with these; partitions stay where they are. */
export const setEnclosure: Applier<'set-enclosure'> = (project, { changes }) => {
  const was = project.enclosure;
  const is = withChanges(was, changes);
  if (is === was) return succeed(project);
  const chambers = replaceWhere(
    is.chambers,
    () => true,
    (chamber) => carryBounds(chamber, was, is),
  );
  return succeed({ ...project, enclosure: withChanges(is, { chambers }) });
};

/** Far below what a saw can do, far above rounding. */
const SAME_M = 1e-7;

function carryBounds(chamber: Chamber, was: Enclosure, is: Enclosure): Chamber {
  const { volume } = chamber;
  if (volume.kind !== 'geometry') return chamber;
  const carry = (value: number, before: number, after: number) =>
    Math.abs(value - before) < SAME_M ? Number(after.toFixed(9)) : value;
  const bounds = {
    ...volume,
    bottomM: carry(volume.bottomM, was.panelM, is.panelM),
    topM: carry(volume.topM, was.heightM - was.panelM, is.heightM - is.panelM),
    depthM:
      volume.depthM === null ? null : carry(volume.depthM, was.depthM - 2 * was.panelM, is.depthM - 2 * is.panelM),
  };
  return withChanges(chamber, { volume: bounds });
}
