import type { Chamber, Driver, Project } from '../document/schema.ts';

/** The drivers behind which a chamber stands, one for each speaker, in the order of the mounts. */
export const driversIn = ({ enclosure, network, drivers }: Project, chamber: Pick<Chamber, 'id'>): Driver[] =>
  enclosure.mounts.flatMap(({ partId, chamberId }) => {
    if (chamberId !== chamber.id) return [];
    const part = network.parts.find((candidate) => candidate.id === partId);
    return part?.kind === 'speaker' ? drivers.filter((candidate) => candidate.id === part.driverId) : [];
  });
