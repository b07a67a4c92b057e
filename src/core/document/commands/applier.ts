import type { Result } from '../../messages/problem.ts';
import type { CommandOf, CommandType } from '../command.ts';
import type { Project } from '../schema.ts';

/** Carries out one type of command. Values are checked afterwards, for all commands alike. */
export type Applier<T extends CommandType> = (project: Project, command: CommandOf<T>) => Result<Project>;
