import { defaultAbsorption, defaultLeak } from '../defaults.ts';
import { plainChamber } from '../plain.ts';
import type { Chamber, Project } from '../schema.ts';
import { freshId } from './freshId.ts';

/** A chamber to start from: 10 litres, stated, without braces or filling, with the usual leak. */
export const newChamber = (project: Project): Chamber => ({
  id: freshId('chamber', project.enclosure.chambers),
  name: `Chamber ${project.enclosure.chambers.length + 1}`,
  volume: { kind: 'stated', grossM3: 0.01 },
  bracesM3: 0,
  fillGain: 1,
  leak: defaultLeak,
  absorption: defaultAbsorption,
  ...plainChamber,
});
