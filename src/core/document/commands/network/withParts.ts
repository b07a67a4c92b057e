import type { Part } from '../../../circuit/part.ts';
import type { Project } from '../../schema.ts';

/** The project with another list of parts, which may be the same one. */
export const withParts = (project: Project, parts: readonly Part[]): Project =>
  parts === project.network.parts ? project : { ...project, network: { ...project.network, parts: [...parts] } };
