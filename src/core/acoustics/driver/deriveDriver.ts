import { type Finding, fail, type Problem, problem, type Result, succeed } from '../../messages/problem.ts';
import type { AirProperties } from '../airProperties.ts';
import { type DriverEntered, FIELD_SYMBOLS, LINKED_FIELDS, type LinkedField } from './driverEntered.ts';
import { type DriverFigures, driverFigures } from './driverFigures.ts';
import type { DriverParameters } from './driverParameters.ts';
import { DRIVER_RULES, type DriverQuantity } from './driverRules.ts';

/** Entered and derived values may differ by this factor before it counts as a contradiction: data sheets round. */
export const SHEET_TOLERANCE = 0.03;
/** A sheet's sensitivity is read off a curve somewhere in the band: only a larger gap says anything, dB. */
export const SENSITIVITY_TOLERANCE_DB = 2;

export interface DerivedDriver {
  readonly parameters: DriverParameters;
  readonly derived: DriverFigures;
  /** Contradictions between entered numbers; the parameters follow those named in `used`. */
  readonly findings: readonly Finding[];
}

/** A value and the entered fields from which it comes. */
interface Known {
  readonly value: number;
  readonly from: ReadonlySet<LinkedField>;
}

const NEEDED = ['reOhm', 'sdM2', 'blTm', 'mmsKg', 'cmsMPerN', 'rmsKgPerS'] as const;

/**
 * A driver's complete lumped parameters from whatever consistent set of data-sheet numbers is given.
 *
 * Any mixture of Re, fs, Qms, Qes, Qts, Vas, Sd, Bl, Mms, Cms, Rms (SI) that fixes all: (Re, fs, Qms, Qes, Vas, Sd), (Re, Bl, Mms, Cms,
 * Rms, Sd), with Qts for one Q, and so on. Vas turns into compliance with `sheetAir`; Mms, fs and Vas include the air load. Le and
 * semi-inductance pass through, none when absent. Numbers beyond need are compared: one that differs from what the more trusted
 * ones give (order of `LINKED_FIELDS`) by over 3 % becomes a finding `acoustics.sheet-contradiction`, and the trusted ones are used;
 * a sensitivity over 2 dB off becomes `acoustics.sheet-sensitivity`. Problems: `acoustics.driver-incomplete` (with the numbers of which
 * one more would do), `acoustics.driver-impossible` (a value not above 0, or a Qts that is not below Qms and Qes).
 * Source: R. H. Small 1972 (see `DRIVER_RULES`).
 *
 * Example: deriveDriver({ reOhm: 6.2, blTm: 7.5, mmsKg: 0.022, cmsMPerN: 9e-4, rmsKgPerS: 1.1, sdM2: 0.0216 }, air)
 */
export const deriveDriver = (entered: DriverEntered, sheetAir: AirProperties): Result<DerivedDriver> => {
  const bulkPa = sheetAir.densityKgPerM3 * sheetAir.soundSpeedMPerS ** 2;
  const impossible: Problem[] = [];
  const findings: Finding[] = [];
  const known = new Map<DriverQuantity, Known>();
  for (const field of LINKED_FIELDS) {
    const value = entered[field];
    if (value === undefined) continue;
    if (!(value > 0 && Number.isFinite(value))) {
      impossible.push(impossibleValue(field, value, []));
      continue;
    }
    const derived = known.get(field);
    if (derived !== undefined) {
      if (Math.abs(value / derived.value - 1) > SHEET_TOLERANCE) findings.push(contradiction(field, value, derived));
      continue;
    }
    known.set(field, { value, from: new Set([field]) });
    // Numbers that cannot stand together would fail again with every further one.
    const failed = impossible.length === 0 ? followRules(known, bulkPa) : null;
    if (failed) impossible.push(failed);
  }
  if (impossible.length > 0) return fail(...impossible);
  const missing = NEEDED.filter((field) => !known.has(field));
  if (missing.length > 0) return fail(incomplete(new Set(known.keys()), missing));
  const read = (field: LinkedField): number => known.get(field)!.value;
  const parameters: DriverParameters = {
    reOhm: read('reOhm'),
    leH: entered.leH ?? 0,
    semiInductance: entered.semiInductance ?? null,
    blTm: read('blTm'),
    mmsKg: read('mmsKg'),
    cmsMPerN: read('cmsMPerN'),
    rmsKgPerS: read('rmsKgPerS'),
    sdM2: read('sdM2'),
  };
  const figures = driverFigures(parameters, sheetAir);
  const stated = entered.sensitivityDb2V83;
  if (stated !== undefined && Math.abs(stated - figures.sensitivityDb2V83) > SENSITIVITY_TOLERANCE_DB) {
    const place = { kind: 'driver', field: 'sensitivityDb2V83' } as const;
    const values = { enteredDb: stated, derivedDb: figures.sensitivityDb2V83 };
    findings.push({ ...problem('acoustics.sheet-sensitivity', place, values), severity: 'note' });
  }
  return succeed({ parameters, derived: figures, findings });
};

/** Applies rules until nothing new follows; a rule that gives no positive number is returned as a Problem. */
const followRules = (known: Map<DriverQuantity, Known>, bulkPa: number): Problem | null => {
  for (let grown = true; grown; ) {
    grown = false;
    for (const { gives, needs, value } of DRIVER_RULES) {
      if (known.has(gives) || !needs.every((need) => known.has(need))) continue;
      const numbers = Object.fromEntries(needs.map((need) => [need, known.get(need)!.value]));
      const result = value(numbers as Record<DriverQuantity, number>, bulkPa);
      const from = new Set(needs.flatMap((need) => [...known.get(need)!.from]));
      if (!(result > 0 && Number.isFinite(result))) return impossibleValue(gives, null, [...from]);
      known.set(gives, { value: result, from });
      grown = true;
    }
  }
  return null;
};

const symbolsOf = (fields: Iterable<DriverQuantity>): string =>
  LINKED_FIELDS.filter((field) => [...fields].includes(field))
    .map((field) => FIELD_SYMBOLS[field])
    .join(', ');

const impossibleValue = (field: DriverQuantity, value: number | null, from: readonly LinkedField[]): Problem =>
  problem(
    'acoustics.driver-impossible',
    { kind: 'driver', field },
    { symbol: symbolsOf([field]), value: value === null || Number.isNaN(value) ? '' : value, from: symbolsOf(from) },
  );

const contradiction = (field: LinkedField, value: number, derived: Known): Finding => ({
  ...problem(
    'acoustics.sheet-contradiction',
    { kind: 'driver', field },
    { field, symbol: FIELD_SYMBOLS[field], entered: value, derived: derived.value, used: symbolsOf(derived.from) },
  ),
  severity: 'warning',
});

/** Which single numbers would complete the set, found by trying each on the rules. */
const incomplete = (known: ReadonlySet<DriverQuantity>, missing: readonly LinkedField[]): Problem => {
  const completes = (extra: LinkedField): boolean => {
    const reach = new Set([...known, extra]);
    for (let size = 0; size < reach.size; ) {
      size = reach.size;
      for (const { gives, needs } of DRIVER_RULES) if (needs.every((need) => reach.has(need))) reach.add(gives);
    }
    return NEEDED.every((field) => reach.has(field));
  };
  const oneMoreOf = LINKED_FIELDS.filter((field) => !known.has(field) && completes(field));
  return problem(
    'acoustics.driver-incomplete',
    { kind: 'driver' },
    { missing: symbolsOf(missing), oneMoreOf: symbolsOf(oneMoreOf) },
  );
};
