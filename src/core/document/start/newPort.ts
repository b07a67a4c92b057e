import { defaultPortLoss } from '../defaults.ts';
import { plainPort } from '../plain.ts';
import type { Port, Project } from '../schema.ts';
import { freeSpot } from './freeSpot.ts';
import { freshId } from './freshId.ts';

const DIAMETER_M = 0.05;

/** A port to start from: one round tube, 50 mm across and 120 mm long, flush with the front, where there is room. */
export const newPort = (project: Project, chamberId: string): Port => ({
  id: freshId('port', project.enclosure.ports),
  chamberId,
  shape: { kind: 'round', diameterM: DIAMETER_M },
  count: 1,
  lengthM: 0.12,
  innerEnd: 'free',
  outerEnd: 'flanged',
  wallM: 0.003,
  loss: defaultPortLoss,
  ...plainPort,
  resonances: true,
  face: 'front',
  ...freeSpot(project, DIAMETER_M / 2, 'bottom'),
});
