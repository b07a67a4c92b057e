import type { Problem, ProblemValues } from '../../messages/problem.ts';
import { thingName } from '../describe/thingName.ts';
import type { Project } from '../schema.ts';

/** Values that hold an id, and what it is the id of; a part's id is what the screen shows, unless it is a port that is meant. */
const HOLDS_ID = { driverId: 'driver', chamberId: 'chamber', curveId: 'curve', partId: 'port' } as const;

/**
 * The same problem or finding for the sentence: `values.name` is what the thing at its place is called on the screen, and values
 * that are ids become names. The place keeps its id, and an id that nothing has stays as it is.
 * @example withNames(problem('speaker.no-volume-left', { kind: 'chamber', id: 'chamber-1' }), project).values.name
 */
export function withNames<P extends Problem>(
  flaw: P,
  design: Pick<Project, 'drivers' | 'enclosure'> & Partial<Pick<Project, 'curves'>>,
): P {
  const { place, values } = flaw;
  const names: Record<string, string> = {};
  const own = place.id === undefined ? null : thingName(place.kind, place.id, design);
  if (own !== null && values.name === undefined) names.name = own;
  for (const [key, kind] of Object.entries(HOLDS_ID)) {
    const id = values[key];
    const name = typeof id === 'string' ? thingName(kind, id, design) : null;
    if (name !== null) names[key] = name;
  }
  return Object.keys(names).length === 0 ? flaw : { ...flaw, values: { ...values, ...names } satisfies ProblemValues };
}
