import type { Line, Project } from '../schema.ts';
import { freshId } from './freshId.ts';

/** A line to start from: 1.5 m, straight, half filled with polyester wadding, open low on the back. */
export const newLine = (project: Project, chamberId: string): Line => ({
  id: freshId('line', project.enclosure.lines),
  name: `Transmission line ${project.enclosure.lines.length + 1}`,
  chamberId,
  lengthM: 1.5,
  startAreaM2: 0.015,
  endAreaM2: 0.015,
  filling: {
    material: 'polyester-wadding',
    densityKgPerM3: 8,
    flowResistivityPaSPerM2: null,
    placing: { kind: 'stuffed', share: 0.5 },
  },
  end: { kind: 'open', face: 'back', xM: 0, yM: Math.min(0.1, project.enclosure.heightM / 2) },
});
