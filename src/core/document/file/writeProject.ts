import { type Project, projectSchema } from '../schema.ts';

/**
 * The text of a project file: keys in the schema's order whatever way the document came about, so that two saves of the
 * same document are the same text; a newline at the end. Throws on a document that its own schema refuses.
 * @example readProject(writeProject(project)) gives the project again
 */
export const writeProject = (project: Project): string => `${JSON.stringify(projectSchema.parse(project), null, 1)}\n`;
