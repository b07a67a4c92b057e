import { cabinetOf } from '../../build/document/index.ts';
import { interferences, USUAL_WEB_M } from '../../build/index.ts';
import { thingName } from '../../document/describe/thingName.ts';
import type { Project } from '../../document/schema.ts';
import type { Finding, Problem } from '../../messages/problem.ts';
import type { Check } from './context.ts';

interface Known {
  readonly drivers: Project['drivers'];
  readonly speakers: string;
  readonly findings: Finding[];
}
const known = new WeakMap<Project['enclosure'], Known>();

/** Whatever cannot be where it is: over an edge, through a wall, in another's way, or with too little room behind it. */
export const cabinetFit: Check = ({ project }) => {
  const { enclosure, drivers, network } = project;
  // The cabinet seldom changes while the crossover does.
  const speakers = network.parts
    .flatMap((part) => (part.kind === 'speaker' ? [`${part.id} ${part.driverId}`] : []))
    .join();
  const before = known.get(enclosure);
  if (before?.drivers === drivers && before.speakers === speakers) return before.findings;
  const findings = faultsOf(project);
  known.set(enclosure, { drivers, speakers, findings });
  return findings;
};

function faultsOf(project: Project): Finding[] {
  const read = cabinetOf(project);
  if (!read.ok) return read.problems.map((flaw) => said(flaw, 'warning', project));
  const found = interferences(read.value.cabinet, USUAL_WEB_M);
  if (!found.ok) return found.problems.map((flaw) => said(flaw, 'warning', project));
  return found.value.map((flaw) => said(flaw, flaw.severity === 'fault' ? 'warning' : 'note', project));
}

/** With the names that the screen shows, and the place that it can show. */
function said({ code, place, values }: Problem, severity: Finding['severity'], project: Project): Finding {
  const { ports, wood } = project.enclosure;
  const named = (id: string): string => {
    // One of several equal ports is the entry of them all.
    const port = ports.find((one) => id === one.id || id.startsWith(`${one.id} `));
    if (port !== undefined) return thingName('port', port.id, project) ?? id;
    return wood.braces.some((brace) => brace.id === id) ? (thingName('brace', id, project) ?? id) : id;
  };
  const portId =
    place.kind === 'port' ? ports.find(({ id }) => place.id === id || place.id?.startsWith(`${id} `))?.id : undefined;
  const names = ['name', 'other'].flatMap((key) =>
    typeof values[key] === 'string' ? [[key, named(values[key])]] : [],
  );
  return {
    severity,
    code,
    place: portId === undefined ? place : { ...place, id: portId },
    values: { ...values, ...Object.fromEntries(names) },
  };
}
