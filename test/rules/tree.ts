import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The folder of the project, with a closing slash. */
export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

const NOT_OURS = new Set(['node_modules', 'dist', 'coverage', 'test-results', 'playwright-report', '.git']);

const walk = (folder: string): string[] =>
  readdirSync(ROOT + folder, { withFileTypes: true })
    .filter(({ name }) => !NOT_OURS.has(name))
    .flatMap((entry) => (entry.isDirectory() ? walk(`${folder}${entry.name}/`) : [`${folder}${entry.name}`]));

/** Every file of the project by its path from the top, installed and built ones apart. */
export const filesOfTree = (): readonly string[] => walk('').sort();

export const inTree = (path: string): boolean => existsSync(ROOT + path);
export const textOf = (path: string): string => readFileSync(ROOT + path, 'utf8');
