import type { Place } from '../../../messages/problem.ts';
import { fail, problem, type Result, succeed } from '../../../messages/problem.ts';
import type { Enclosure, Project } from '../../schema.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';

/** Lists of the cabinet whose entries stand alone: nothing else refers to them. */
type ListName = 'ports' | 'passiveRadiators' | 'lines';
type Entry<K extends ListName> = Enclosure[K][number];

/** Adding, changing and removing an entry of one list of the cabinet; an unknown id is refused with `code`. */
export function listed<K extends ListName>(name: K, kind: Place['kind'], code: string) {
  const unknown = (id: string): Result<never> => fail(problem(code, { kind, id }));
  const withList = (project: Project, list: readonly Entry<K>[]): Project => {
    const changes = { [name]: list } as Partial<Enclosure>;
    return withChanges(project, { enclosure: withChanges(project.enclosure, changes) });
  };
  return {
    add: (project: Project, entry: Entry<K>): Result<Project> =>
      succeed(withList(project, [...project.enclosure[name], entry])),
    set: (project: Project, id: string, changes: Partial<Entry<K>>): Result<Project> => {
      const list = project.enclosure[name] as readonly Entry<K>[];
      if (!list.some((entry) => entry.id === id)) return unknown(id);
      return succeed(
        withList(
          project,
          replaceWhere(
            list,
            (entry) => entry.id === id,
            (entry) => withChanges<Entry<K>>(entry, changes),
          ),
        ),
      );
    },
    remove: (project: Project, id: string): Result<Project> => {
      const list = project.enclosure[name] as readonly Entry<K>[];
      const rest = list.filter((entry) => entry.id !== id);
      return rest.length === list.length ? unknown(id) : succeed(withList(project, rest));
    },
  };
}
