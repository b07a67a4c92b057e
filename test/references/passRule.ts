import type { Json } from './adapter.ts';

/** One bound of a difference: within `rel` of the expected magnitude or within `abs`, either is enough. */
export interface Bound {
  readonly rel?: number;
  readonly abs?: number;
}

/** What a case tolerates. Any other key names an expected key and overrides the bound there. */
export interface Tolerance extends Bound {
  readonly abs_dB?: number;
  readonly abs_deg?: number;
  readonly rel_Z?: number;
  readonly rel_published?: number;
  readonly abs_published?: number;
  readonly exact?: boolean;
  readonly [key: string]: number | boolean | Bound | undefined;
}

export type Units = string | Readonly<Record<string, string>>;

export interface Mismatch {
  /** Keys and list places down to the leaf, joined by dots. */
  readonly leaf: string;
  readonly expected: Json;
  /** Absent where the output has no such leaf. */
  readonly got?: Json;
  readonly why: string;
}

type Path = readonly string[];
type JsonRecord = { readonly [key: string]: Json };

const isRecord = (value: Json | undefined): value is JsonRecord =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isList = (value: Json | undefined): value is readonly Json[] => Array.isArray(value);

/** List places are no names: `Zin_mag_ohm.3` is named by its key. */
const names = (path: Path): readonly string[] => path.filter((step) => !/^\d+$/.test(step));
const named = (path: Path, part: string): boolean => names(path).some((name) => name.includes(part));

const unitsOf = (path: Path, units: Units): string => {
  if (typeof units === 'string') return units;
  const own = names(path).findLast((name) => units[name] !== undefined);
  return [own === undefined ? '' : units[own], units.note ?? ''].join(' ');
};

/** Degrees come round after 360, unless the units say that the phase is unwrapped. */
const comesRound = (path: Path, units: Units): boolean => {
  const text = unitsOf(path, units);
  if (text.includes('unwrapped')) return false;
  return named(path, 'deg') || (named(path, 'phase') && /\bdeg/.test(text));
};

/** A measure of its own (dB, degrees, impedance) takes the place of the general one; a key's own bound that of both. */
const boundAt = (path: Path, tolerance: Tolerance): Bound | 'exact' => {
  const key = names(path).findLast((name) => typeof tolerance[name] === 'object');
  if (key !== undefined) return tolerance[key] as Bound;
  if (tolerance.exact === true) return 'exact';
  if (tolerance.abs_dB !== undefined && named(path, 'dB')) return { abs: tolerance.abs_dB };
  if (tolerance.abs_deg !== undefined && (named(path, 'deg') || named(path, 'phase')))
    return { abs: tolerance.abs_deg };
  if (tolerance.rel_Z !== undefined && named(path, 'Zin_mag')) return { rel: tolerance.rel_Z };
  return bound(tolerance.rel, tolerance.abs);
};

const bound = (rel: number | undefined, abs: number | undefined): Bound => ({
  ...(rel === undefined ? {} : { rel }),
  ...(abs === undefined ? {} : { abs }),
});

/** The greatest difference that passes: an expected zero under `rel` alone lets |x| be as great as `rel` itself. */
export const allowedDifference = (expected: number, { rel, abs }: Bound): number => {
  const byRel = rel === undefined ? 0 : rel * Math.abs(expected);
  if (expected === 0 && abs === undefined && rel !== undefined) return rel;
  return Math.max(byRel, abs ?? 0);
};

/** Difference of two angles in degrees, -180 to 180. */
const turn = (a: number, b: number): number => {
  const d = (a - b) % 360;
  return d > 180 ? d - 360 : d < -180 ? d + 360 : d;
};

const compareLeaf = (expected: Json, got: Json | undefined, path: Path, limit: Bound | 'exact', units: Units) => {
  const mismatch = (why: string): Mismatch[] => [
    { leaf: path.join('.'), expected, ...(got === undefined ? {} : { got }), why },
  ];
  if (got === undefined) return mismatch('missing');
  if (typeof expected !== 'number' || limit === 'exact') return got === expected ? [] : mismatch('not equal');
  if (typeof got !== 'number' || !Number.isFinite(got)) return mismatch('not a number');
  const difference = Math.abs(comesRound(path, units) ? turn(got, expected) : got - expected);
  const allowed = allowedDifference(expected, limit);
  return difference <= allowed ? [] : mismatch(`off by ${difference}, allowed ${allowed}`);
};

type BoundOf = (path: Path) => Bound | 'exact';

const compare = (expected: Json, got: Json | undefined, path: Path, boundOf: BoundOf, units: Units): Mismatch[] => {
  if (isList(expected)) {
    if (!isList(got) || got.length !== expected.length)
      return [
        {
          leaf: path.join('.'),
          expected,
          ...(got === undefined ? {} : { got }),
          why: `not a list of ${expected.length}`,
        },
      ];
    return expected.flatMap((item, i) => compare(item, got[i], [...path, String(i)], boundOf, units));
  }
  if (isRecord(expected)) {
    const inside = isRecord(got) ? got : {};
    return Object.entries(expected)
      .filter(([key]) => !isPublished(key))
      .flatMap(([key, value]) => compare(value, inside[key], [...path, key], boundOf, units));
  }
  return compareLeaf(expected, got, path, boundOf(path), units);
};

const isPublished = (key: string): boolean => key.startsWith('published');

/**
 * The key whose value a printed one speaks of: `published_h` of `h`; a bare `published` list or number of the only other
 * key there is. null: no namesake.
 */
const namesake = (key: string, siblings: JsonRecord): string | null => {
  const others = Object.keys(siblings).filter((other) => !isPublished(other));
  const [only] = others;
  if (key === 'published') return others.length === 1 && only !== undefined ? only : null;
  const name = key.replace(/^published_?/, '');
  return others.includes(name) ? name : null;
};

/** Printed values, loosely: each against the output of its namesake, at every depth. */
const comparePublished = (
  expected: Json,
  got: Json | undefined,
  path: Path,
  limit: Bound,
  units: Units,
): Mismatch[] => {
  if (isList(expected))
    return expected.flatMap((item, i) =>
      comparePublished(item, isList(got) ? got[i] : undefined, [...path, String(i)], limit, units),
    );
  if (!isRecord(expected)) return [];
  const inside = isRecord(got) ? got : {};
  const against = (printed: Json, name: string, via: Path) =>
    compare(printed, inside[name], [...path, ...via], () => limit, units);
  return Object.entries(expected).flatMap(([key, value]) => {
    if (!isPublished(key)) return comparePublished(value, inside[key], [...path, key], limit, units);
    if (key === 'published' && isRecord(value))
      return Object.entries(value)
        .filter(([name]) => name in expected && !isPublished(name))
        .flatMap(([name, printed]) => against(printed, name, [key, name]));
    const name = namesake(key, expected);
    return name === null ? [] : against(value, name, [key]);
  });
};

/**
 * Compares the outputs of a case with what it expects: every leaf of `expected` not named published*, and the published
 * ones with their namesakes where the tolerance has a bound for them. Returns what does not hold; empty when all does.
 */
export function mismatches(expected: Json, got: Json, tolerance: Tolerance, units: Units): readonly Mismatch[] {
  const own = compare(expected, got, [], (path) => boundAt(path, tolerance), units);
  const loose = bound(tolerance.rel_published, tolerance.abs_published);
  if (loose.rel === undefined && loose.abs === undefined) return own;
  return [...own, ...comparePublished(expected, got, [], loose, units)];
}

/** The bound in force at a leaf, for the tests that disturb every leaf. */
export const boundAtLeaf = (leaf: string, tolerance: Tolerance): Bound | 'exact' => boundAt(leaf.split('.'), tolerance);
