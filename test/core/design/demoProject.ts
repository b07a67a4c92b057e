import { readFileSync } from 'node:fs';
import { type Project, projectSchema } from '../../../src/core/document/schema.ts';

/** One of the invented demo projects, as saved. */
export function demoProject(name: 'reading-room' | 'kitchen-shelf' | 'port-lesson'): Project {
  const file = new URL(`../../../demo-data/${name}/${name}.conewright.json`, import.meta.url);
  return projectSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
}

/** The same with one part of the network changed. */
export const withPart = (project: Project, id: string, changes: object): Project => ({
  ...project,
  network: { parts: project.network.parts.map((part) => (part.id === id ? { ...part, ...changes } : part)) },
});
