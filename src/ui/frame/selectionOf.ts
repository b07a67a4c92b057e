import type { Project } from '../../core/document/schema.ts';
import type { Place } from '../../core/messages/problem.ts';
import type { Selection } from '../../state/workbench.ts';

/** What to select so that a place of a sentence is shown: a node by the first part that ends there. null where it is nothing that can be picked. */
export function selectionOf(place: Place, project: Project): Selection {
  const { kind, id } = place;
  if (id === undefined) return null;
  switch (kind) {
    case 'part':
    case 'mount': {
      const part = project.network.parts.find((candidate) => candidate.id === id);
      if (!part) return null;
      return { kind: part.kind === 'speaker' ? 'speaker' : 'part', id };
    }
    case 'node': {
      const touching = project.network.parts.find(({ nodes }) => nodes.includes(id));
      return touching ? selectionOf({ kind: 'part', id: touching.id }, project) : null;
    }
    case 'driver':
    case 'chamber':
    case 'port':
    case 'radiator':
    case 'duct':
    case 'curve':
      return { kind, id };
    default:
      return null;
  }
}
