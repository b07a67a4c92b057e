import { fail } from '../../../messages/problem.ts';
import type { CommandType } from '../../command.ts';
import { shortProblems } from '../../graph/shortProblems.ts';
import type { Applier } from '../applier.ts';

/** An edit of the circuit that is refused when it newly shorts an amplifier or a speaker, or joins two amplifiers. */
export const keepingWhole =
  <T extends CommandType>(apply: Applier<T>): Applier<T> =>
  (project, command) => {
    const result = apply(project, command);
    if (!result.ok) return result;
    const shorts = shortProblems(project.network.parts, result.value.network.parts);
    return shorts.length > 0 ? fail(...shorts) : result;
  };
