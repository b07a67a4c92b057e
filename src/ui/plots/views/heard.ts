import type { Evaluation } from '../../../core/design/evaluation.ts';
import type { Project } from '../../../core/document/schema.ts';
import type { SpeakerResult } from '../../../core/speaker/simulation.ts';
import { linesOf, type Outlet, portsOf, radiatorsOf } from './outlets.ts';

/** The cones that radiate themselves: one with a chamber in front of it is heard through that chamber's openings only. */
export const heardCones = ({ model, simulation }: Evaluation): readonly SpeakerResult[] =>
  simulation.speakers.filter(
    ({ partId }) => !model.speakers.some((speaker) => speaker.partId === partId && speaker.frontChamberId),
  );

/** The openings that radiate: ports, passive radiators and mouths of lines, save ports that lead into another chamber. */
export const heardOutlets = (project: Project, { model, simulation }: Evaluation): readonly Outlet[] => [
  ...portsOf(project, simulation).filter(
    ({ result }) => !model.ports.some((port) => port.id === result.id && port.toChamberId),
  ),
  ...radiatorsOf(project, simulation),
  ...linesOf(project, simulation),
];
