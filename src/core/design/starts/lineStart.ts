import type { Command } from '../../document/command.ts';
import type { Project } from '../../document/schema.ts';
import { newLine } from '../../document/start/newLine.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { lineEndCorrectionM } from '../lineQuarterWave.ts';
import { emptied } from './emptied.ts';
import { wayOf } from './wayOf.ts';

/** Area behind the cone over cone area, and at the open end (common practice, no source). */
const START_OVER_SD = 1.25;
const END_OVER_SD = 1;

/**
 * The command that makes a transmission line of a driver's box: a line of a quarter wave at fs, tapering from 1.25 to 1 times the cone's
 * area and half filled, in the place of whatever opens its chamber. `design.needs-chamber` without one.
 * @example lineStart(project, 'LS1')
 */
export function lineStart(project: Project, partId: string): Result<Command> {
  const way = wayOf(project, partId);
  if (!way.ok) return way;
  const { mount, parameters, figures, air } = way.value;
  if (mount.chamberId === null) {
    return fail(problem('design.needs-chamber', { kind: 'mount', id: partId }, { name: partId }));
  }
  const shown = (value: number): number => Number(value.toPrecision(3));
  const endAreaM2 = shown(END_OVER_SD * parameters.sdM2);
  const wholeM = air.soundSpeedMPerS / (4 * figures.fsHz);
  const line = {
    ...newLine(project, mount.chamberId),
    startAreaM2: shown(START_OVER_SD * parameters.sdM2),
    endAreaM2,
    lengthM: Math.max(0.1, Math.round(100 * (wholeM - lineEndCorrectionM(endAreaM2))) / 100),
  };
  const commands: Command[] = [...emptied(project, mount.chamberId), { type: 'add-line', line }];
  return succeed({ type: 'together', commands });
}
