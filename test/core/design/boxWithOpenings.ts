import type { Project } from '../../../src/core/document/schema.ts';
import { demoProject } from './demoProject.ts';

type Enclosure = Project['enclosure'];

export const room = demoProject('reading-room');
const [port] = room.enclosure.ports;
if (port === undefined) throw new Error('The demonstration has a port.');

export const radiator: Enclosure['passiveRadiators'][number] = {
  id: 'PR1',
  name: 'back radiator',
  chamberId: port.chamberId,
  count: 2,
  sdM2: 0.016,
  mmsKg: 0.09,
  fsHz: 20,
  qms: 8,
  addedMassKg: 0.03,
  xmaxM: 0.006,
  outerDiameterM: 0.2,
  face: 'back',
  xM: 0,
  yM: 0.3,
};

export const line: Enclosure['lines'][number] = {
  id: 'LN1',
  name: 'short line',
  chamberId: port.chamberId,
  lengthM: 0.4,
  startAreaM2: 0.003,
  endAreaM2: 0.002,
  filling: null,
  end: { kind: 'open', face: 'back', xM: 0.05, yM: 0.6 },
};

/** The three-way demonstration with other openings of its woofer's chamber in the place of its port. */
export const withOpenings = (openings: Partial<Pick<Enclosure, 'ports' | 'passiveRadiators' | 'lines'>>): Project => ({
  ...room,
  enclosure: { ...room.enclosure, ports: [], ...openings },
});

/** Its own port with both ends rounded by a radius. */
export const rounded = (edgeM: number): Enclosure['ports'][number] => ({
  ...port,
  innerFlareM: edgeM,
  outerFlareM: edgeM,
});

export const driven = (project: Project, driveV: number): Project => ({
  ...project,
  chain: { ...project.chain, driveV },
});
