import { RETURN } from '../../../circuit/branch.ts';
import type { Part } from '../../../circuit/part.ts';
import { fail, problem, succeed } from '../../../messages/problem.ts';
import { freshPartId } from '../../graph/freshPartId.ts';
import type { Applier } from '../applier.ts';
import { withParts } from '../network/withParts.ts';
import { alike } from '../withChanges.ts';

/** The new speaker hangs on the first amplifier's output, without parts of its own yet. A driver that is there is used. */
export const addWay: Applier<'add-way'> = (project, { driver, mount }) => {
  const { drivers, enclosure, network } = project;
  const amplifier = network.parts.find((part) => part.kind === 'amplifier');
  if (!amplifier) return fail(problem('document.no-amplifier', { kind: 'document' }));
  const present = drivers.find((candidate) => candidate.id === driver.id);
  if (present && !alike(present, driver)) {
    return fail(
      problem('document.duplicate-id', { kind: 'driver', id: driver.id }, { what: 'drivers', id: driver.id }),
    );
  }
  const partId = freshPartId(network.parts, 'speaker');
  const speaker: Part = {
    kind: 'speaker',
    id: partId,
    nodes: [amplifier.nodes[0], RETURN],
    driverId: driver.id,
    note: '',
  };
  return succeed({
    ...withParts(project, [...network.parts, speaker]),
    drivers: present ? drivers : [...drivers, driver],
    enclosure: { ...enclosure, mounts: [...enclosure.mounts, { ...mount, partId }] },
  });
};
