import type { Project } from '../core/document/schema.ts';
import type { Selection } from './workbench.ts';

/**
 * What stays picked after an edit: the same thing while it exists; a part that was renamed or swapped in its place is
 * still the part in that place.
 */
export function selectionIn(selection: Selection, before: Project, after: Project): Selection {
  if (selection === null || before === after || has(after, selection)) return selection;
  if (selection.kind !== 'part' && selection.kind !== 'speaker') return null;
  const was = before.network.parts;
  const is = after.network.parts;
  const place = was.findIndex((part) => part.id === selection.id);
  const heir = was.length === is.length && place >= 0 ? is[place] : undefined;
  if (heir === undefined || was.some((part) => part.id === heir.id)) return null;
  return selection.kind === 'speaker' && heir.kind !== 'speaker' ? null : { ...selection, id: heir.id };
}

function has(project: Project, { kind, id }: NonNullable<Selection>): boolean {
  const { network, enclosure, drivers, curves } = project;
  const among = (things: readonly { readonly id: string }[]) => things.some((thing) => thing.id === id);
  switch (kind) {
    case 'part':
      return among(network.parts);
    case 'speaker':
      return among(network.parts.filter((part) => part.kind === 'speaker'));
    case 'port':
      return among(enclosure.ports);
    case 'radiator':
      return among(enclosure.passiveRadiators);
    case 'duct':
      return among(enclosure.lines);
    case 'chamber':
      return among(enclosure.chambers);
    case 'driver':
      return among(drivers);
    case 'curve':
      return among(curves);
  }
}
