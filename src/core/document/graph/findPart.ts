import type { Part } from '../../circuit/part.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import type { Project } from '../schema.ts';

/** The part of that id, or the problem that there is none. */
export function findPart(project: Project, partId: string): Result<Part> {
  const part = project.network.parts.find((candidate) => candidate.id === partId);
  return part ? succeed(part) : fail(problem('document.unknown-part', { kind: 'part', id: partId }));
}

/** The speaker of that part id, or the problem that there is none. */
export function findSpeaker(project: Project, partId: string): Result<Part & { readonly kind: 'speaker' }> {
  const part = project.network.parts.find((candidate) => candidate.id === partId);
  return part?.kind === 'speaker'
    ? succeed(part)
    : fail(problem('document.unknown-speaker', { kind: 'part', id: partId }));
}
