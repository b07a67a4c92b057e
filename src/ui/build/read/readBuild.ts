import { airProperties } from '../../../core/acoustics/airProperties.ts';
import { type CabinetOfProject, cabinetOf } from '../../../core/build/document/cabinetOf.ts';
import { type Interference, interferences, USUAL_WEB_M } from '../../../core/build/fit/index.ts';
import {
  type CabinetVolumes,
  type ChamberWaves,
  type CutListLine,
  cutList,
  type Panel,
  panelsOf,
  standingWaves,
  volumesOf,
} from '../../../core/build/panels/index.ts';
import type { Project } from '../../../core/document/schema.ts';
import { type Result, succeed } from '../../../core/messages/problem.ts';
import { type BuildNames, buildNames } from './buildNames.ts';
import { guessedFittings } from './guessedFittings.ts';

/** A line of the cut list with the letter that its pieces bear in the drawings. */
export interface MarkedLine extends CutListLine {
  readonly mark: string;
  /** Of the parts in a sheet layout. */
  readonly partId: string;
}

/** All that the build sheet shows of one document. */
export interface Build {
  readonly project: Project;
  readonly names: BuildNames;
  readonly read: CabinetOfProject;
  readonly panels: readonly Panel[];
  readonly lines: readonly MarkedLine[];
  readonly volumes: Result<CabinetVolumes>;
  readonly waves: Result<readonly ChamberWaves[]>;
  readonly clashes: Result<readonly Interference[]>;
  /** Ids of drivers with something in their fitting that is still a guess. */
  readonly guessed: ReadonlySet<string>;
}

const WAVES_SHOWN = 3;

const known = new WeakMap<Project, Result<Build>>();

/** Reads a document's cabinet as wood; one answer per document, so that every part of the sheet shows the same. */
export function readBuild(project: Project): Result<Build> {
  const before = known.get(project);
  if (before) return before;
  const build = read(project);
  known.set(project, build);
  return build;
}

function read(project: Project): Result<Build> {
  const cabinet = cabinetOf(project);
  if (!cabinet.ok) return cabinet;
  const panels = panelsOf(cabinet.value.cabinet);
  if (!panels.ok) return panels;
  const spaces = cabinet.value.cabinet.dividers.flatMap(({ below, above }) => [below, above]);
  const air = airProperties(project.air);
  return succeed({
    project,
    names: buildNames(project, spaces),
    read: cabinet.value,
    panels: panels.value,
    lines: cutList(panels.value).map((line, i) => ({ ...line, mark: markOf(i), partId: line.panels.join(' + ') })),
    volumes: volumesOf(cabinet.value.cabinet),
    waves: air.ok ? standingWaves(cabinet.value.cabinet, WAVES_SHOWN, air.value.soundSpeedMPerS) : air,
    clashes: interferences(cabinet.value.cabinet, USUAL_WEB_M),
    guessed: new Set([...guessedFittings(project)].filter(([, { open }]) => open.size > 0).map(([id]) => id)),
  });
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** A, B … Z, AA, AB … */
export const markOf = (index: number): string =>
  (index >= LETTERS.length ? markOf(Math.floor(index / LETTERS.length) - 1) : '') + LETTERS[index % LETTERS.length]!;
