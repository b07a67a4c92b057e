import type { Import } from './syntax.ts';

// Imports point one way: core <- plot, worker; state -> core, worker types; ui -> core, plot, state; app -> all.
const ROOMS: Readonly<Record<string, readonly string[]>> = {
  core: ['core'],
  plot: ['core', 'plot'],
  worker: ['core', 'worker'],
  state: ['core', 'state'],
  ui: ['core', 'plot', 'state', 'ui'],
  app: ['core', 'plot', 'worker', 'state', 'ui', 'app'],
};

const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  core: ['zod'],
  plot: ['d3-scale', 'd3-shape'],
  worker: [],
  state: ['zustand', 'zundo', 'idb', 'zod'],
  ui: ['react', 'react-dom', 'zustand', 'd3-scale', 'd3-shape'],
  app: ['react', 'react-dom', 'zustand', 'idb', 'virtual:pwa-register'],
};

/** The expression reader alone, which is loaded when the first expression is typed. */
const MATHJS_FILE = 'src/core/units/expression.ts';

// Inside core: a room may bring in what stands further left, and its neighbours of the same step.
const STEPS: readonly (readonly string[])[] = [
  ['messages'],
  ['math'],
  ['units', 'circuit', 'acoustics', 'measured'],
  ['schematic', 'document'],
  ['speaker'],
  ['design', 'build'],
];
const STRANGERS = [
  ['circuit', 'acoustics'],
  ['schematic', 'document'],
];

const roomOf = (path: string): string | undefined => /^src\/([^/]+)\//.exec(path)?.[1];
/** The room inside core; the offer of the whole core, src/core/index.ts, is in none. */
export const coreRoomOf = (path: string): string | undefined => /^src\/core\/([^/]+)\//.exec(path)?.[1];
const stepOf = (room: string): number => STEPS.findIndex((step) => step.includes(room));

const packageOf = (source: string): string =>
  source
    .split('/')
    .slice(0, source.startsWith('@') ? 2 : 1)
    .join('/');

const forbiddenPackage = (path: string, room: string, source: string): string | null => {
  const name = packageOf(source);
  if (name === 'mathjs') return path === MATHJS_FILE ? null : `mathjs belongs in ${MATHJS_FILE} alone`;
  if (PACKAGES[room]?.includes(name)) return null;
  return `src/${room} does not use the package ${name}`;
};

const forbiddenInCore = (path: string, target: string): string | null => {
  const from = coreRoomOf(path);
  if (from === undefined) return null;
  const to = coreRoomOf(target);
  if (to === undefined) return 'a room of core brings in the index of the whole core';
  if (stepOf(from) < 0) return `core has no room ${from}`;
  if (from !== to && STRANGERS.some((pair) => pair.includes(from) && pair.includes(to)))
    return `${from} and ${to} do not know each other`;
  return stepOf(to) <= stepOf(from) ? null : `${from} stands before ${to}`;
};

/** Why a file of src must not bring this in; null where it may. */
export function forbidden(path: string, { target, inProject, typeOnly }: Import): string | null {
  const from = roomOf(path);
  if (from === undefined || ROOMS[from] === undefined) return `src has no room for ${path}`;
  if (!inProject) return forbiddenPackage(path, from, target);
  const to = roomOf(target);
  if (to === undefined)
    return from === 'app' && /^demo-data\/.*\.json$/.test(target) ? null : 'src brings in a file from outside src';
  if (from === 'state' && to === 'worker') return typeOnly ? null : 'state knows the types of worker alone';
  if (!ROOMS[from].includes(to)) return `${from} does not know ${to}`;
  return from === 'core' ? forbiddenInCore(path, target) : null;
}

/** A round trip in a graph of who brings in whom, as the names along it; null where there is none. */
export function cycleIn(graph: ReadonlyMap<string, ReadonlySet<string>>): readonly string[] | null {
  const done = new Set<string>();
  const visit = (name: string, trail: readonly string[]): readonly string[] | null => {
    const at = trail.indexOf(name);
    if (at >= 0) return [...trail.slice(at), name];
    if (done.has(name)) return null;
    for (const next of graph.get(name) ?? []) {
      const found = visit(next, [...trail, name]);
      if (found !== null) return found;
    }
    done.add(name);
    return null;
  };
  for (const name of graph.keys()) {
    const found = visit(name, []);
    if (found !== null) return found;
  }
  return null;
}
