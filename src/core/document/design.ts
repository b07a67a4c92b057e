import type { Project } from './schema.ts';

/** What shapes the sound: shared by a project and its kept states. */
export type Design = Pick<Project, 'air' | 'drivers' | 'enclosure' | 'network' | 'chain' | 'listening'>;

/** The design of a project or a kept state alone, its parts identical. */
export const designOf = ({ air, drivers, enclosure, network, chain, listening }: Design): Design => ({
  air,
  drivers,
  enclosure,
  network,
  chain,
  listening,
});

/** The kept state as a project that can be evaluated: its own design with the project's curves. */
export const projectOfState = (project: Project, state: Design): Project => ({ ...project, ...designOf(state) });
