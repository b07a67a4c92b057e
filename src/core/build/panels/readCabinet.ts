import { fail, type Problem, problem, type Result, succeed } from '../../messages/problem.ts';
import { volumeOf } from '../solid/index.ts';
import { braceSpaces } from './braceSolid.ts';
import type { Cabinet } from './cabinet.ts';
import { chamberSpaces, type InnerSpaces } from './chamberSpaces.ts';
import { jointFaults } from './jointRules.ts';
import { type Shell, shellOf } from './shell.ts';

export interface ReadCabinet {
  readonly cabinet: Cabinet;
  readonly shell: Shell;
  readonly spaces: InnerSpaces;
}

/** A cabinet with its walls and inner spaces worked out, or everything that stops it from being one. */
export function readCabinet(cabinet: Cabinet): Result<ReadCabinet> {
  const shell = shellOf(cabinet);
  if (!shell.ok) return shell;
  const faults: Problem[] = jointFaults(cabinet, shell.value);
  const spaces = chamberSpaces(cabinet, shell.value);
  if (!spaces.ok) return fail(...faults, ...spaces.problems);
  for (const brace of cabinet.braces) {
    const solid = braceSpaces(brace, spaces.value.chambers.get(brace.chamberId)!);
    if (!(volumeOf(solid) > 1e-9))
      faults.push(
        problem(
          'build.brace-outside',
          { kind: 'document', id: brace.id },
          { name: brace.id, chamber: brace.chamberId },
        ),
      );
  }
  for (const { id, lengthM, at } of cabinet.ports) {
    const thicknessM = cabinet.thicknessM[at.wall];
    if (!(lengthM >= thicknessM))
      faults.push(problem('build.port-shorter-than-wall', { kind: 'port', id }, { name: id, lengthM, thicknessM }));
  }
  return faults.length > 0 ? fail(...faults) : succeed({ cabinet, shell: shell.value, spaces: spaces.value });
}
