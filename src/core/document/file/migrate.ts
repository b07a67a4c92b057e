import { fail, problem, type Result, succeed } from '../../messages/problem.ts';

/** A document of some older version, known to be a group of fields and nothing more. */
export type OldDocument = Readonly<Record<string, unknown>>;

/** Carries a document over by one version, `version` included. Throws when it cannot; it must not change its input. */
export type Migration = (document: OldDocument) => OldDocument;

/** The first entry carries version 1 over to 2, the next one 2 to 3, and so on. The present version is one above their number. */
export const migrations: readonly Migration[] = [
  // 2: chambers before a cone, passive radiators, lines, fillings, active filters. What is absent has a default in the schema.
  (document) => ({ ...document, version: 2 }),
];

/**
 * Carries a document forward, step by step, from the version that it states to the one after the last step.
 * A version that is newer, or is no whole number from 1, is refused.
 * @example migrate({ version: 1, ... }) gives the same document carries it over to the present version
 */
export function migrate(document: OldDocument, steps: readonly Migration[] = migrations): Result<OldDocument> {
  const known = steps.length + 1;
  const { version } = document;
  const place = { kind: 'file', field: 'version' } as const;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return fail(problem('document.bad-version', place, { found: String(version), known }));
  }
  if (version > known) return fail(problem('document.newer-version', place, { found: version, known }));
  let current = document;
  for (let from = version; from < known; from++) {
    try {
      current = steps[from - 1]!(current);
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      return fail(problem('document.migration-failed', place, { from, detail }));
    }
    if (current.version !== from + 1) throw new Error(`The step from version ${from} must give version ${from + 1}.`);
  }
  return succeed(current);
}
