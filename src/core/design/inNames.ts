import { withNames } from '../document/checks/withNames.ts';
import { thingName } from '../document/describe/thingName.ts';
import type { Project } from '../document/schema.ts';
import type { Problem } from '../messages/problem.ts';
import {
  airNode,
  coneNode,
  emfNode,
  leakBranch,
  lineMouthBranch,
  lineNode,
  mouthNode,
  portBranch,
  radiatorBranch,
  volumeBranch,
} from '../speaker/nodeNames.ts';

/** A line is at most a filled and an empty stretch. */
const LINE_PIECES = [0, 1];

/**
 * Problems or findings of a design with the names that the person gave, where the core knows ids, and with words for the nodes and
 * branches that only the solved circuit has. Their places keep the ids.
 * @example inNames(findings, project)
 */
export function inNames<P extends Problem>(flaws: readonly P[], project: Project): readonly P[] {
  let inner: ReadonlyMap<string, string> | undefined;
  return flaws.map((flaw) => {
    if (!flaw.code.startsWith('circuit.')) return withNames(flaw, project);
    inner ??= innerNames(project);
    const values = Object.entries(flaw.values).map(([key, value]) => [key, inner?.get(String(value)) ?? value]);
    return withNames({ ...flaw, values: Object.fromEntries(values) }, project);
  });
}

function innerNames(project: Project): ReadonlyMap<string, string> {
  const { network, enclosure } = project;
  return new Map([
    ...network.parts.flatMap(({ id }) => [emfNode(id), coneNode(id)].map((node) => [node, `inside ${id}`] as const)),
    ...enclosure.chambers.flatMap(({ id }) => {
      const name = thingName('chamber', id, project) ?? id;
      const air = [airNode(id), volumeBranch(id)].map((of) => [of, `the air of chamber “${name}”`] as const);
      return [...air, [leakBranch(id), `the leak of chamber “${name}”`] as const];
    }),
    ...enclosure.ports.flatMap(({ id }) =>
      [portBranch(id), mouthNode(id)].map((of) => [of, `the air in ${thingName('port', id, project)}`] as const),
    ),
    ...enclosure.passiveRadiators.map(
      ({ id }) => [radiatorBranch(id), `passive radiator “${thingName('radiator', id, project)}”`] as const,
    ),
    ...enclosure.lines.flatMap(({ id }) =>
      [lineMouthBranch(id), ...LINE_PIECES.map((k) => lineNode(id, k))].map(
        (of) => [of, `the air in line “${thingName('duct', id, project)}”`] as const,
      ),
    ),
  ]);
}
