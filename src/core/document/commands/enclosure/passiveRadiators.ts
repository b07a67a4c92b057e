import type { Applier } from '../applier.ts';
import { listed } from './listed.ts';

const radiators = listed('passiveRadiators', 'radiator', 'document.unknown-radiator');

export const addRadiator: Applier<'add-radiator'> = (project, { radiator }) => radiators.add(project, radiator);
export const setRadiator: Applier<'set-radiator'> = (project, { id, changes }) => radiators.set(project, id, changes);
export const removeRadiator: Applier<'remove-radiator'> = (project, { id }) => radiators.remove(project, id);
