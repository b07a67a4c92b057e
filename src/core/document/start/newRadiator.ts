import type { PassiveRadiator, Project } from '../schema.ts';
import { freeSpot } from './freeSpot.ts';
import { freshId } from './freshId.ts';

const DIAMETER_M = 0.17;

/** A passive radiator to start from: invented, 170 mm, of the same cone area as the starting woofer, without added mass. */
export const newRadiator = (project: Project, chamberId: string): PassiveRadiator => ({
  id: freshId('radiator', project.enclosure.passiveRadiators),
  name: `Passive radiator ${project.enclosure.passiveRadiators.length + 1}`,
  chamberId,
  count: 1,
  sdM2: 0.0137,
  mmsKg: 0.03,
  fsHz: 25,
  qms: 6,
  addedMassKg: 0,
  xmaxM: 0.008,
  outerDiameterM: DIAMETER_M,
  face: 'back',
  ...freeSpot(project, DIAMETER_M / 2, 'bottom'),
});
