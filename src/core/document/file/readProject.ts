import { fail, type Problem, problem, type Result, succeed } from '../../messages/problem.ts';
import { crossReferences } from '../checks/crossReferences.ts';
import { curveFlaws } from '../checks/curveFlaws.ts';
import { issueProblem } from '../checks/issueProblem.ts';
import { type Project, projectSchema } from '../schema.ts';
import { jsonErrorLine } from './jsonErrorLine.ts';
import { migrate, type OldDocument } from './migrate.ts';

/** The greatest document that the schema allows, 40 curves of 20 000 points, takes about this many characters. */
export const MOST_CHARACTERS = 50e6;

/** As many problems as a person reads before mending the file. */
const MOST_PROBLEMS = 12;

/**
 * Reads a project from the text of a file: form, version (older ones are carried forward), every value, and that
 * everything which refers to something else finds it. The text is never changed; a newer version is refused.
 * Problems name the field in words, the found value and what is allowed.
 * @example readProject('{"format":"conewright-project","version":1, ...}')
 */
export function readProject(text: string): Result<Project> {
  const place = { kind: 'file' } as const;
  if (text.length > MOST_CHARACTERS) {
    return fail(problem('document.too-large-file', place, { characters: text.length, most: MOST_CHARACTERS }));
  }
  if (text.trim() === '') return fail(problem('document.empty-file', place));

  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    const line = jsonErrorLine(text, error);
    return fail(problem('document.not-json', line === null ? place : { ...place, line }));
  }
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    return fail(problem('document.not-a-project', place));
  }
  const { format } = json as OldDocument;
  if (format !== 'conewright-project') {
    const found = typeof format === 'string' ? { found: format.slice(0, 60) } : {};
    return fail(problem('document.not-a-project', place, found));
  }
  const migrated = migrate(json as OldDocument);
  if (!migrated.ok) return migrated;

  const parsed = projectSchema.safeParse(migrated.value);
  if (!parsed.success) {
    const at = { kind: 'field' } as const;
    return fail(...firstOf(parsed.error.issues.map((issue) => issueProblem(issue, migrated.value, at))));
  }
  const flaws = [...parsed.data.curves.flatMap(curveFlaws), ...crossReferences(parsed.data)];
  return flaws.length > 0 ? fail(...firstOf(flaws)) : succeed(parsed.data);
}

function firstOf(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= MOST_PROBLEMS) return problems;
  const count = problems.length - MOST_PROBLEMS;
  return [...problems.slice(0, MOST_PROBLEMS), problem('document.more-problems', { kind: 'file' }, { count })];
}
