import type { Project } from '../core/document/schema.ts';
import { newProject } from '../core/document/start/newProject.ts';
import type { StartingPoint } from '../ui/index.ts';

type Loaded = Promise<{ readonly default: unknown }>;

/** A demonstration file is data like any other: it is checked where it is opened. */
const demonstration = async (loaded: Loaded): Promise<Project> => (await loaded).default as Project;

/** What a person can begin with. Each demonstration is fetched when it is asked for. */
export const startingPoints: readonly StartingPoint[] = [
  {
    id: 'new',
    title: 'Empty project',
    about: 'One full-range driver in a small sealed box, to build on.',
    load: async () => newProject(),
  },
  {
    id: 'reading-room',
    title: 'Reading room three-way',
    about: 'An invented floor-standing three-way: vented woofer, mid in its own chamber, dome tweeter, some 20 parts.',
    load: () => demonstration(import('../../demo-data/reading-room/reading-room.conewright.json')),
  },
  {
    id: 'kitchen-shelf',
    title: 'Kitchen shelf two-way',
    about: 'An invented small sealed two-way.',
    load: () => demonstration(import('../../demo-data/kitchen-shelf/kitchen-shelf.conewright.json')),
  },
  {
    id: 'port-lesson',
    title: 'One box, one port',
    about: 'For a workshop: a single driver, and the length of its port as one large handle.',
    load: () => demonstration(import('../../demo-data/port-lesson/port-lesson.conewright.json')),
  },
];
