import type { Applier } from '../applier.ts';
import { listed } from './listed.ts';

const lines = listed('lines', 'duct', 'document.unknown-line');

export const addLine: Applier<'add-line'> = (project, { line }) => lines.add(project, line);
export const setLine: Applier<'set-line'> = (project, { id, changes }) => lines.set(project, id, changes);
export const removeLine: Applier<'remove-line'> = (project, { id }) => lines.remove(project, id);
