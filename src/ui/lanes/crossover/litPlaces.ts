import type { Finding, Problem } from '../../../core/messages/problem.ts';

/** How strongly a thing of the drawing is marked. */
export type Mark = 'fault' | 'danger' | 'warning';

/** What findings and problems say about parts and nodes, by id; the gravest mark wins. Notes mark nothing. */
export interface LitPlaces {
  readonly parts: ReadonlyMap<string, Mark>;
  readonly nodes: ReadonlyMap<string, Mark>;
}

/** Values of problems that hold a part's id. */
const NAMING = ['part', 'source', 'by'] as const;

const RANK: Readonly<Record<Mark, number>> = { warning: 1, danger: 2, fault: 3 };

/** Parts and nodes that the present problems and findings name. */
export function litPlaces(problems: readonly Problem[], findings: readonly Finding[]): LitPlaces {
  const parts = new Map<string, Mark>();
  const nodes = new Map<string, Mark>();
  const raise = (among: Map<string, Mark>, id: string, mark: Mark) => {
    const before = among.get(id);
    if (before === undefined || RANK[mark] > RANK[before]) among.set(id, mark);
  };
  const light = (problem: Problem, mark: Mark) => {
    const { kind, id } = problem.place;
    if (id !== undefined && kind === 'node') raise(nodes, id, mark);
    if (id !== undefined && (kind === 'part' || kind === 'mount')) raise(parts, id, mark);
    // A node may have no wire to be seen by: the parts that the sentence names stand for it.
    for (const key of NAMING) {
      const named = problem.values[key];
      if (typeof named === 'string') raise(parts, named, mark);
    }
  };
  for (const problem of problems) light(problem, 'fault');
  for (const finding of findings) {
    if (finding.severity !== 'note') light(finding, finding.severity);
  }
  return { parts, nodes };
}

const sameMarks = (a: ReadonlyMap<string, Mark>, b: ReadonlyMap<string, Mark>): boolean =>
  a.size === b.size && [...a].every(([id, mark]) => b.get(id) === mark);

/** Whether the same things are marked in the same way. */
export const sameLit = (a: LitPlaces, b: LitPlaces): boolean =>
  sameMarks(a.parts, b.parts) && sameMarks(a.nodes, b.nodes);
