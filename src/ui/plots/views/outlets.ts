import { thingName } from '../../../core/document/describe/thingName.ts';
import type { Project } from '../../../core/document/schema.ts';
import type { PassiveRadiatorResult, PortResult, Simulation } from '../../../core/speaker/simulation.ts';
import { type LineStyle, wayStyle } from '../../../plot/index.ts';
import { waysInOrder } from '../../waysInOrder.ts';

/** What besides cones is set in motion by a box: how it is called and drawn, and what was computed for it. */
export interface Outlet<Result extends PortResult = PortResult> {
  readonly kind: 'port' | 'radiator' | 'line';
  /** In pictures: `port:P1`, `radiator:PR1`, `line:L1`. */
  readonly id: string;
  readonly name: string;
  readonly style: LineStyle;
  /** The speaker in whose lane it belongs. */
  readonly speakerId: string | null;
  readonly result: Result;
}

const DASHES = { port: [1.25, 1.75], radiator: [1.25, 3.5], line: [3.5, 1.5, 1.25, 1.5] } as const;

/**
 * Name, style and lane of a port, passive radiator or line: it sounds with the first speaker of its chamber (or, where that has none,
 * of a chamber that ports or lines join to it), in that way's colour.
 */
export function outletLook(
  project: Project,
  kind: Outlet['kind'],
  id: string,
): Pick<Outlet, 'name' | 'style' | 'speakerId'> {
  const { ports, passiveRadiators, lines } = project.enclosure;
  const own = { port: ports, radiator: passiveRadiators, line: lines }[kind].find((outlet) => outlet.id === id);
  const way = own && wayAround(project, own.chamberId);
  const named = thingName(kind === 'line' ? 'duct' : kind, id, project);
  return {
    name: named?.replace(/^the /, '') ?? id,
    style: { ...wayStyle(way?.index ?? 5), dash: DASHES[kind] },
    speakerId: way?.speakerId ?? null,
  };
}

function wayAround(project: Project, chamberId: string) {
  const { mounts, ports, lines } = project.enclosure;
  const joined = [
    ...ports.map((port) => [port.chamberId, port.toChamberId] as const),
    ...lines.map(({ chamberId: from, end }) => [from, end.kind === 'chamber' ? end.chamberId : null] as const),
  ];
  const reached = [chamberId];
  // Grows while it is walked: the nearest chambers come first.
  for (const here of reached) {
    const way = waysInOrder(project).find(({ speakerId }) =>
      mounts.some((mount) => mount.partId === speakerId && (mount.chamberId === here || mount.frontChamberId === here)),
    );
    if (way) return way;
    for (const [a, b] of joined) {
      const next = a === here ? b : b === here ? a : null;
      if (next !== null && !reached.includes(next)) reached.push(next);
    }
  }
  return undefined;
}

const outletsOf =
  <Result extends PortResult>(kind: Outlet['kind'], results: (simulation: Simulation) => readonly Result[]) =>
  (project: Project, simulation: Simulation): Outlet<Result>[] =>
    results(simulation).map((result) => ({
      kind,
      id: `${kind}:${result.id}`,
      ...outletLook(project, kind, result.id),
      result,
    }));

export const portsOf = outletsOf('port', ({ ports }) => ports);
export const linesOf = outletsOf('line', ({ lines }) => lines);
export const radiatorsOf = outletsOf<PassiveRadiatorResult>('radiator', ({ passiveRadiators }) => passiveRadiators);
