import type { Applier } from '../applier.ts';
import { listed } from './listed.ts';

const ports = listed('ports', 'port', 'document.unknown-port');

export const addPort: Applier<'add-port'> = (project, { port }) => ports.add(project, port);
export const setPort: Applier<'set-port'> = (project, { id, changes }) => ports.set(project, id, changes);
export const removePort: Applier<'remove-port'> = (project, { id }) => ports.remove(project, id);
