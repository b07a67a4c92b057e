import {
  aperiodicStart,
  bandPassStart,
  isobaricStart,
  lineStart,
  openBaffleStart,
  radiatorStart,
  sealedStart,
} from '../../../../core/design/starts/index.ts';
import type { BoxKind } from '../../../../core/design/suitability.ts';
import { ventedStart } from '../../../../core/design/ventedStart.ts';
import type { Command } from '../../../../core/document/command.ts';
import type { Project } from '../../../../core/document/schema.ts';
import { fail, problem, type Result, succeed } from '../../../../core/messages/problem.ts';

export interface StartingPoint {
  readonly name: string;
  /** What the button does, in one line. */
  readonly does: string;
  readonly start: (project: Project, partId: string) => Result<Command>;
  /** The kind that the driver is judged for; null: no rule of the literature speaks of it. */
  readonly kind: BoxKind | null;
}

/** One-click beginnings for a way, each one undo step. */
export const STARTING_POINTS: readonly StartingPoint[] = [
  { name: 'sealed', does: 'close whatever opens its chamber', start: sealedStart, kind: 'sealed' },
  { name: 'vented', does: 'the flat vented box, with its port', start: flatVented, kind: 'vented' },
  {
    name: 'passive radiator',
    does: 'in the place of the port, loaded for the same tuning',
    start: radiatorStart,
    kind: 'passive-radiator',
  },
  { name: 'band-pass', does: 'add a front chamber with a port', start: bandPassStart, kind: 'band-pass' },
  {
    name: 'isobaric',
    does: 'add the second driver and the coupling chamber; in parallel the load halves: check the amplifier',
    start: isobaricStart,
    kind: null,
  },
  { name: 'open baffle', does: 'take the chamber away', start: openBaffleStart, kind: 'open-baffle' },
  {
    name: 'transmission line',
    does: 'a tapered, half-filled line, a quarter wave long at fs',
    start: lineStart,
    kind: null,
  },
  {
    name: 'aperiodic vent',
    does: 'a short stuffed vent that damps the resonance',
    start: aperiodicStart,
    kind: null,
  },
];

function flatVented(project: Project, partId: string): Result<Command> {
  const mount = project.enclosure.mounts.find((candidate) => candidate.partId === partId);
  const chamber = project.enclosure.chambers.find(({ id }) => id === mount?.chamberId);
  const found = chamber ? ventedStart(project, chamber) : null;
  if (found === null) return fail(problem('design.needs-chamber', { kind: 'mount', id: partId }, { name: partId }));
  return found.ok ? succeed(found.value.command) : found;
}
