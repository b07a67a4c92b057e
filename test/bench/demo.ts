import { readFileSync } from 'node:fs';
import { type Project, projectSchema } from '../../src/core/document/schema.ts';

/** Demo (a), the three-way for a reading room, as its file has it. */
export const demoA = (): Project =>
  projectSchema.parse(
    JSON.parse(
      readFileSync(new URL('../../demo-data/reading-room/reading-room.conewright.json', import.meta.url), 'utf8'),
    ),
  );
