import type { Place } from '../../messages/problem.ts';
import type { Project } from '../schema.ts';
import { portName } from './portName.ts';

type Named = Pick<Project, 'drivers' | 'enclosure'> & Partial<Pick<Project, 'curves'>>;
type Thing = { readonly id: string; readonly name?: string };

/**
 * What a driver, chamber, port, passive radiator, line or curve is called on the screen; null where there is none of that id. One without a name goes by
 * its number. A port has no name: alone it is "the port", one of several goes by its id, which the screen shows.
 * @example thingName('chamber', 'chamber-1', project) // 'woofer chamber'
 */
export function thingName(kind: Place['kind'], id: string, { drivers, enclosure, curves }: Named): string | null {
  const { chambers, ports, passiveRadiators, lines } = enclosure;
  const named = (things: readonly Thing[] = [], noun: string = kind): string | null => {
    const index = things.findIndex((thing) => thing.id === id);
    return index < 0 ? null : things[index]?.name?.trim() || `${noun} ${index + 1}`;
  };
  switch (kind) {
    case 'driver':
      return named(drivers);
    case 'chamber':
      return named(chambers);
    case 'radiator':
      return named(passiveRadiators, 'passive radiator');
    case 'duct':
      return named(lines, 'transmission line');
    case 'brace':
      return named(enclosure.wood.braces);
    case 'curve':
      return named(curves);
    case 'port':
      if (!ports.some((port) => port.id === id)) return null;
      return ports.length === 1 ? 'the port' : portName(id);
    default:
      return null;
  }
}
