import { describe, expect, it } from 'vitest';
import type { Json } from './adapter.ts';
import { loadCases, OWN_CASES } from './harness.ts';
import { allowedDifference, boundAtLeaf, mismatches, type Tolerance, type Units } from './passRule.ts';

const leaves = (expected: Json, got: Json, tolerance: Tolerance, units: Units = {}): string[] =>
  mismatches(expected, got, tolerance, units).map(({ leaf }) => leaf);

describe('every leaf of expected is compared', () => {
  it('in lists, records and records of lists', () => {
    const expected = { a: 1, b: [1, 2], c: { d: [3, { e: 4 }] } };
    expect(leaves(expected, expected, { abs: 0.1 })).toEqual([]);
    expect(leaves(expected, { a: 2, b: [1, 3], c: { d: [4, { e: 5 }] } }, { abs: 0.1 })).toEqual([
      'a',
      'b.1',
      'c.d.0',
      'c.d.1.e',
    ]);
  });
  it('a missing leaf fails, at every depth', () => {
    expect(leaves({ a: 1 }, {}, { abs: 9 })).toEqual(['a']);
    expect(leaves({ a: { b: 1 } }, { a: {} }, { abs: 9 })).toEqual(['a.b']);
    expect(leaves({ a: { b: 1 } }, {}, { abs: 9 })).toEqual(['a.b']);
    expect(leaves({ a: 1 }, null, { abs: 9 })).toEqual(['a']);
  });
  it('a list of another length fails', () => {
    expect(leaves({ a: [1, 2] }, { a: [1] }, { abs: 9 })).toEqual(['a']);
    expect(leaves({ a: [1, 2] }, { a: [1, 2, 3] }, { abs: 9 })).toEqual(['a']);
    expect(leaves({ a: [1, 2] }, { a: 1 }, { abs: 9 })).toEqual(['a']);
    expect(leaves({ a: [1, 2] }, {}, { abs: 9 })).toEqual(['a']);
  });
  it('what is not expected is not looked at', () => {
    expect(leaves({ a: 1 }, { a: 1, b: 7 }, { abs: 0 })).toEqual([]);
  });
  it('what is no finite number fails where one is expected', () => {
    for (const got of [Number.NaN, Number.POSITIVE_INFINITY, null, '1', true, [1], { a: 1 }])
      expect(leaves({ a: 1 }, { a: got }, { abs: 9, rel: 9 })).toEqual(['a']);
  });
  it('without any bound only equality passes', () => {
    expect(leaves({ a: 1 }, { a: 1 }, {})).toEqual([]);
    expect(leaves({ a: 1 }, { a: 1 + 1e-15 }, {})).toEqual(['a']);
  });
});

describe('rel and abs', () => {
  it('rel is of the expected magnitude', () => {
    expect(leaves({ a: -200 }, { a: -201.9 }, { rel: 0.01 })).toEqual([]);
    expect(leaves({ a: -200 }, { a: -202.1 }, { rel: 0.01 })).toEqual(['a']);
  });
  it('either of the two is enough', () => {
    expect(leaves({ a: 200 }, { a: 201.9 }, { rel: 0.01, abs: 0.1 })).toEqual([]);
    expect(leaves({ a: 1 }, { a: 1.09 }, { rel: 0.01, abs: 0.1 })).toEqual([]);
    expect(leaves({ a: 1 }, { a: 1.11 }, { rel: 0.01, abs: 0.1 })).toEqual(['a']);
  });
  it('an expected zero under rel alone means |x| <= rel', () => {
    expect(leaves({ a: 0, b: -0 }, { a: 1e-7, b: -1e-7 }, { rel: 1e-6 })).toEqual([]);
    expect(leaves({ a: 0 }, { a: -1.1e-6 }, { rel: 1e-6 })).toEqual(['a']);
  });
  it('an expected zero under both has abs alone', () => {
    expect(leaves({ a: 0 }, { a: 1e-7 }, { rel: 1e-2, abs: 1e-8 })).toEqual(['a']);
    expect(leaves({ a: 0 }, { a: 1e-9 }, { rel: 1e-2, abs: 1e-8 })).toEqual([]);
  });
});

describe('a measure of its own', () => {
  const tolerance = { abs_dB: 0.1, abs_deg: 1, rel_Z: 0.01, rel: 1e-6 };
  it('abs_dB holds for keys with dB, and there alone', () => {
    expect(leaves({ level_dB_SPL: [90] }, { level_dB_SPL: [90.09] }, tolerance)).toEqual([]);
    expect(leaves({ level_dB_SPL: [90] }, { level_dB_SPL: [90.11] }, tolerance)).toEqual(['level_dB_SPL.0']);
    expect(leaves({ level: 90 }, { level: 90.09 }, tolerance)).toEqual(['level']);
    expect(leaves({ G_dB_at: { 20: -19 } }, { G_dB_at: { 20: -19.09 } }, tolerance)).toEqual([]);
  });
  it('abs_dB takes the place of rel', () => {
    expect(leaves({ a_dB: 90 }, { a_dB: 91 }, { abs_dB: 0.1, rel: 0.5 })).toEqual(['a_dB']);
  });
  it('abs_deg holds for keys with deg or phase', () => {
    expect(leaves({ a_deg: 10, phase: 10, b: 10 }, { a_deg: 10.9, phase: 10.9, b: 10.9 }, tolerance)).toEqual(['b']);
    expect(leaves({ a_deg: 10, phase: 10 }, { a_deg: 11.1, phase: 11.1 }, tolerance)).toEqual(['a_deg', 'phase']);
  });
  it('rel_Z holds for Zin_mag', () => {
    expect(leaves({ Zin_mag_ohm: [8] }, { Zin_mag_ohm: [8.07] }, tolerance)).toEqual([]);
    expect(leaves({ Zin_mag_ohm: [8] }, { Zin_mag_ohm: [8.09] }, tolerance)).toEqual(['Zin_mag_ohm.0']);
    expect(leaves({ Z_ohm: [8] }, { Z_ohm: [8.07] }, tolerance)).toEqual(['Z_ohm.0']);
  });
});

describe('a tolerance key equal to an expected key', () => {
  it('overrides with its own rel or abs alone', () => {
    const tolerance = { rel: 0.5, abs: 5, a: { rel: 0.01 }, b: { abs: 1 }, c_dB: { abs: 2 }, abs_dB: 0.1 };
    expect(leaves({ a: 100, b: [100], c_dB: 1, d: 100 }, { a: 102, b: [102], c_dB: 2.9, d: 149 }, tolerance)).toEqual([
      'a',
      'b.0',
    ]);
    expect(leaves({ a: 100, b: [100] }, { a: 100.9, b: [100.9] }, tolerance)).toEqual([]);
  });
  it('does not take the published key of that name with it', () => {
    const tolerance = { a: { rel: 1e-6 }, rel_published: 0.01 };
    expect(leaves({ a: 100, published_a: 100.5 }, { a: 100 }, tolerance)).toEqual([]);
  });
});

describe('degrees', () => {
  it('compare modulo 360', () => {
    expect(leaves({ phase_deg: [180, -270, 0] }, { phase_deg: [-180, 90, 720] }, { rel: 1e-8 })).toEqual([]);
    expect(leaves({ phase_deg: 179.9 }, { phase_deg: -179.9 }, { abs: 0.3 })).toEqual([]);
    expect(leaves({ phase_deg: 179.9 }, { phase_deg: -179.9 }, { abs: 0.1 })).toEqual(['phase_deg']);
    expect(leaves({ phase: 180 }, { phase: -180 }, { abs: 0.1 }, 'deg')).toEqual([]);
    expect(leaves({ phase: 180 }, { phase: -180 }, { abs: 0.1 }, { phase: 'degrees' })).toEqual([]);
  });
  it('unless the units say unwrapped: of the key, in a note, or as a whole', () => {
    const wrong = ['phase_deg'];
    const check = (units: Units) => leaves({ phase_deg: -182 }, { phase_deg: 178 }, { rel: 1e-8 }, units);
    expect(check({ phase_deg: 'deg, unwrapped' })).toEqual(wrong);
    expect(check({ note: 'phase_deg unwrapped, 0 at f=0' })).toEqual(wrong);
    expect(check('deg, unwrapped')).toEqual(wrong);
    expect(check({ other_deg: 'deg, unwrapped' })).toEqual([]);
  });
  it('are not radians, speeds or frequencies', () => {
    expect(leaves({ phase_rad: 0.5 }, { phase_rad: 360.5 }, { abs: 0.1 }, { phase_rad: 'rad' })).toEqual(['phase_rad']);
    expect(leaves({ phase_speed_m_s: 208 }, { phase_speed_m_s: 568 }, { abs: 1 }, 'm/s')).toEqual(['phase_speed_m_s']);
    expect(leaves({ f_Hz: 10 }, { f_Hz: 370 }, { abs: 1 })).toEqual(['f_Hz']);
  });
});

describe('published values', () => {
  const tolerance = { rel: 1e-6, rel_published: 0.01 };
  it('are compared with the output of their namesake', () => {
    expect(leaves({ h: 2, published_h: 2.01 }, { h: 2 }, tolerance)).toEqual([]);
    expect(leaves({ h: 2, published_h: 2.03 }, { h: 2 }, tolerance)).toEqual(['published_h']);
    expect(leaves({ k: [1, 2], published_k: [1, 2.1] }, { k: [1, 2] }, tolerance)).toEqual(['published_k.1']);
    expect(leaves({ h: 2, published_h: 2.03 }, { h: 2 }, { ...tolerance, abs_published: 0.05 })).toEqual([]);
  });
  it('are skipped where the tolerance has no bound for them', () => {
    expect(leaves({ h: 2, published_h: 3 }, { h: 2 }, { rel: 1e-6 })).toEqual([]);
  });
  it('are skipped where they have no namesake', () => {
    expect(leaves({ h: 2, published_of_old: 3 }, { h: 2 }, tolerance)).toEqual([]);
    expect(leaves({ a: 2, b: 2, published: 3 }, { a: 2, b: 2 }, tolerance)).toEqual([]);
  });
  it('a bare list or number speaks of the only other key', () => {
    expect(leaves({ J1: [1, 2], published: [1, 2.01] }, { J1: [1, 2] }, tolerance)).toEqual([]);
    expect(leaves({ J1: [1, 2], published: [1, 2.1] }, { J1: [1, 2] }, tolerance)).toEqual(['published.1']);
  });
  it('nested records are compared key by key', () => {
    const expected = { f: 60.87, published: { f: 60.9, V: 7 } };
    expect(leaves(expected, { f: 60.87 }, tolerance)).toEqual([]);
    expect(leaves({ ...expected, published: { f: 62 } }, { f: 60.87 }, tolerance)).toEqual(['published.f']);
    const inner = { part: { h: 2, published_h: 2.03, published: { h: 2.03 } } };
    expect(leaves(inner, { part: { h: 2 } }, tolerance)).toEqual(['part.published_h', 'part.published.h']);
  });
  it('need not come back themselves', () => {
    expect(leaves({ h: 2, published_h: 2 }, { h: 2 }, tolerance)).toEqual([]);
  });
});

describe('exact and null', () => {
  it('exact means equal lists and values', () => {
    expect(leaves({ E3: [10, 22, 47] }, { E3: [10, 22, 47] }, { exact: true })).toEqual([]);
    expect(leaves({ E3: [10, 22, 47] }, { E3: [10, 22, 47 + 1e-12] }, { exact: true })).toEqual(['E3.2']);
    expect(leaves({ E3: [10, 22, 47] }, { E3: [10, 22] }, { exact: true })).toEqual(['E3']);
    expect(leaves({ E3: ['a'] }, { E3: ['b'] }, { exact: true })).toEqual(['E3.0']);
  });
  it('null must come back as null', () => {
    expect(leaves({ a: null, b: [null] }, { a: null, b: [null] }, { abs: 1 })).toEqual([]);
    expect(leaves({ a: null, b: [null] }, { a: 0, b: [-400] }, { abs: 1 })).toEqual(['a', 'b.0']);
    expect(leaves({ a: null }, {}, { abs: 1 })).toEqual(['a']);
  });
  it('texts and truth values must be equal', () => {
    expect(leaves({ a: true, b: 'x' }, { a: false, b: 'y' }, { rel: 1 })).toEqual(['a', 'b']);
    expect(leaves({ a: true, b: 'x' }, { a: true, b: 'x' }, { rel: 1 })).toEqual([]);
  });
});

// The rule on the real cases: right answers pass, and each leaf is really looked at with its own bound.
const pathsOf = (value: Json, path: readonly string[] = []): string[][] => {
  if (typeof value !== 'object' || value === null) return [[...path]];
  return Object.entries(value)
    .filter(([key]) => !key.startsWith('published'))
    .flatMap(([key, inner]) => pathsOf(inner as Json, [...path, key]));
};
const valueAt = (value: Json, path: readonly string[]): Json =>
  path.reduce<Json>((inner, step) => (inner as { readonly [key: string]: Json })[step] ?? null, value);
const withValue = (value: Json, path: readonly string[], leaf: Json | undefined): Json => {
  const copy = structuredClone(value) as Record<string, Json>;
  const holder = path.slice(0, -1).reduce<Record<string, Json>>((inner, step) => inner[step] as never, copy);
  const last = path.at(-1)!;
  if (leaf === undefined) delete holder[last];
  else holder[last] = leaf;
  return copy;
};

describe('on every reference case', () => {
  const cases = loadCases(OWN_CASES);
  it('there are 272 of them, without addresses', () => {
    expect(cases.length).toBe(272);
    expect(cases.filter((reference) => 'address' in reference)).toEqual([]);
  });
  it('its own expected values pass', () => {
    for (const { id, expected, tolerance, units } of cases)
      expect(mismatches(expected, expected, tolerance, units), id).toEqual([]);
  });
  it('a leaf disturbed by a little more than its bound fails, by a little less passes', () => {
    let disturbed = 0;
    for (const { id, expected, tolerance, units } of cases) {
      const strict = { ...tolerance };
      // Printed values have their own, looser bound: here the computed ones are looked at.
      delete strict.rel_published;
      delete strict.abs_published;
      for (const path of pathsOf(expected)) {
        const leaf = path.join('.');
        const right = valueAt(expected, path);
        const limit = boundAtLeaf(leaf, strict);
        const wrong: Json[] = [null, undefined as never];
        if (typeof right === 'number') {
          const allowed = limit === 'exact' ? 0 : allowedDifference(right, limit);
          const step = Math.max(allowed * 1.01, Math.abs(right) * 1e-12, 1e-300);
          wrong.push(right + step, right - step);
          const near = withValue(expected, path, right + allowed * 0.99);
          expect(mismatches(expected, near, strict, units), `${id} ${leaf}`).toEqual([]);
        } else if (right === null) wrong.splice(0, 1, 0);
        else wrong.push(typeof right === 'boolean' ? !right : `${right}!`);
        for (const value of wrong) {
          const found = mismatches(expected, withValue(expected, path, value), strict, units);
          // Leaving out an element of a list leaves a hole: the leaf is missing there as well.
          expect(
            found.map((mismatch) => mismatch.leaf),
            `${id} ${leaf} as ${value}`,
          ).toEqual([leaf]);
          disturbed += 1;
        }
      }
    }
    expect(disturbed).toBeGreaterThan(4000);
  });
});
