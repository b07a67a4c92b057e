import type { Finding, Problem } from '../../../core/messages/problem.ts';

/** How strongly a thing of the drawing is marked. */
export type Mark = 'fault' | 'danger' | 'warning';

/** What findings and problems say about parts and nodes, by id; the gravest mark wins. Notes mark nothing. */
export interface LitPlaces {
  readonly parts: ReadonlyMap<string, Mark>;
  readonly nodes: ReadonlyMap<string, Mark>;
}

const RANK: Readonly<Record<Mark, number>> = { warning: 1, danger: 2, fault: 3 };

/** Parts and nodes that the present problems and findings name. */
export function litPlaces(problems: readonly Problem[], findings: readonly Finding[]): LitPlaces {
  const parts = new Map<string, Mark>();
  const nodes = new Map<string, Mark>();
  const light = (problem: Problem, mark: Mark) => {
    const { kind, id } = problem.place;
    if (id === undefined) return;
    const among = kind === 'node' ? nodes : kind === 'part' || kind === 'mount' ? parts : null;
    const before = among?.get(id);
    if (among && (before === undefined || RANK[mark] > RANK[before])) among.set(id, mark);
  };
  for (const problem of problems) light(problem, 'fault');
  for (const finding of findings) {
    if (finding.severity !== 'note') light(finding, finding.severity);
  }
  return { parts, nodes };
}
