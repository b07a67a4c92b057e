import type { Command } from '../../document/command.ts';
import type { Project } from '../../document/schema.ts';

/** Commands that take ports, passive radiators and lines of a chamber away, so that it is sealed. */
export function emptied({ enclosure }: Project, chamberId: string): Command[] {
  const here = (thing: { readonly chamberId: string }): boolean => thing.chamberId === chamberId;
  return [
    ...enclosure.ports
      .filter((port) => here(port) || port.toChamberId === chamberId)
      .map(({ id }): Command => ({ type: 'remove-port', id })),
    ...enclosure.passiveRadiators.filter(here).map(({ id }): Command => ({ type: 'remove-radiator', id })),
    ...enclosure.lines
      .filter((line) => here(line) || (line.end.kind === 'chamber' && line.end.chamberId === chamberId))
      .map(({ id }): Command => ({ type: 'remove-line', id })),
  ];
}
