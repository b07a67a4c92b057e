import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Adapter, Inputs, Json } from './adapter.ts';
import { type Mismatch, mismatches, type Tolerance, type Units } from './passRule.ts';

export interface ReferenceCase {
  readonly id: string;
  readonly family: string;
  readonly inputs: Inputs;
  readonly expected: Json;
  readonly tolerance: Tolerance;
  readonly units: Units;
  readonly source: string;
}

export type Outcome = { readonly id: string; readonly family: string } & (
  | { readonly kind: 'passed' }
  | { readonly kind: 'not covered' }
  | { readonly kind: 'failed'; readonly mismatches: readonly Mismatch[]; readonly error?: string }
);

/** The project's own copy of the cases. */
export const OWN_CASES = fileURLToPath(new URL('./cases.json', import.meta.url));

/** Reads cases from a file: a list of them or a record with `cases`. */
export function loadCases(file: string): readonly ReferenceCase[] {
  const content: unknown = JSON.parse(readFileSync(file, 'utf8'));
  const cases = Array.isArray(content) ? content : (content as { cases?: unknown }).cases;
  if (!Array.isArray(cases)) throw new Error(`${file} holds no list of cases.`);
  return cases as readonly ReferenceCase[];
}

export const ADAPTERS_FOLDER = fileURLToPath(new URL('./adapters/', import.meta.url));

export interface LoadedAdapters {
  readonly adapters: readonly Adapter[];
  /** Files that could not be used, each with the reason; their cases are not covered, and the run has failed. */
  readonly broken: readonly string[];
}

/** Imports every file of the folder; each exports `adapter` or a list `adapters`. */
export async function loadAdapters(folder: string = ADAPTERS_FOLDER): Promise<LoadedAdapters> {
  const adapters: Adapter[] = [];
  const broken: string[] = [];
  for (const file of readdirSync(folder).sort()) {
    if (!file.endsWith('.ts')) continue;
    try {
      const module: { adapter?: Adapter; adapters?: readonly Adapter[] } = await import(
        /* @vite-ignore */ pathToFileURL(join(folder, file)).href
      );
      const found = [...(module.adapters ?? []), ...(module.adapter === undefined ? [] : [module.adapter])];
      if (found.length === 0) broken.push(`${file}: exports neither adapter nor adapters`);
      adapters.push(...found);
    } catch (error) {
      broken.push(`${file}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return { adapters, broken };
}

/** Does the adapter take this family with these keys: all that it requires, and no other than it knows? */
export const takes = (adapter: Adapter, { family, inputs }: Pick<ReferenceCase, 'family' | 'inputs'>): boolean => {
  const known = new Set([...adapter.requires, ...(adapter.allows ?? [])]);
  return (
    adapter.family === family &&
    adapter.requires.every((key) => Object.hasOwn(inputs, key)) &&
    Object.keys(inputs).every((key) => known.has(key))
  );
};

/** Of several that take a case, the one that requires most is the closest fit. */
export const adapterFor = (adapters: readonly Adapter[], reference: ReferenceCase): Adapter | undefined =>
  adapters
    .filter((adapter) => takes(adapter, reference))
    .reduce<Adapter | undefined>(
      (best, next) => (best === undefined || next.requires.length > best.requires.length ? next : best),
      undefined,
    );

/** Runs one case. An adapter that throws has failed, with its message. */
export function runCase(adapters: readonly Adapter[], reference: ReferenceCase): Outcome {
  const { id, family, expected, tolerance, units } = reference;
  const adapter = adapterFor(adapters, reference);
  if (adapter === undefined) return { id, family, kind: 'not covered' };
  try {
    const found = mismatches(expected, adapter.run(reference.inputs), tolerance, units);
    return found.length === 0 ? { id, family, kind: 'passed' } : { id, family, kind: 'failed', mismatches: found };
  } catch (thrown) {
    const error = thrown instanceof Error ? thrown.message : String(thrown);
    return { id, family, kind: 'failed', mismatches: [], error };
  }
}

/** Runs every case; `npm run references` and the test both come through here. */
export const runReferences = (adapters: readonly Adapter[], cases: readonly ReferenceCase[]): readonly Outcome[] =>
  cases.map((reference) => runCase(adapters, reference));
