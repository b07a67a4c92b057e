import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Json } from './adapter.ts';
import { adapterFor, loadAdapters, loadCases, OWN_CASES, runReferences, takes } from './harness.ts';

interface Dispute {
  readonly id: string;
  readonly derivation: string;
}
const disputed: readonly Dispute[] = JSON.parse(readFileSync(new URL('./disputed.json', import.meta.url), 'utf8'));
const cases = loadCases(OWN_CASES);
const { adapters, broken } = await loadAdapters();
const outcomes = runReferences(adapters, cases);

describe('the core against published values', () => {
  for (const outcome of outcomes) {
    if (outcome.kind === 'not covered' || disputed.some(({ id }) => id === outcome.id)) continue;
    const { source } = cases.find(({ id }) => id === outcome.id)!;
    it(`${outcome.id}: ${source}`, () => {
      expect(outcome).toEqual({ id: outcome.id, family: outcome.family, kind: 'passed' });
    });
  }

  it('every adapter can be loaded', () => {
    expect(broken).toEqual([]);
  });

  it('a disputed case exists, fails, and has its derivation written down', () => {
    for (const { id, derivation } of disputed) {
      expect(outcomes.find((outcome) => outcome.id === id)?.kind, id).toBe('failed');
      expect(derivation.length, id).toBeGreaterThan(80);
    }
  });

  it('no two adapters fit a case equally well', () => {
    for (const reference of cases) {
      const best = adapterFor(adapters, reference);
      const equal = adapters.filter(
        (adapter) => takes(adapter, reference) && adapter.requires.length === best?.requires.length,
      );
      expect(equal.length, reference.id).toBeLessThanOrEqual(1);
    }
  });

  // True of every input, so that another number must change nothing.
  const SAME_EVERYWHERE = ['xo-sum-bw3']; // The two halves of a third-order Butterworth crossover sum flat at every frequency.

  it('an adapter looks at its inputs: with other numbers it fails or throws', () => {
    let count = 0;
    const moved = (value: Json): Json => {
      // Each number by a factor of its own: shapes and topologies stay the same when all are moved alike.
      if (typeof value === 'number') return value * (1.37 + 0.11 * count++) + 0.11;
      if (Array.isArray(value)) return value.map(moved);
      if (typeof value === 'object' && value !== null)
        return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, moved(inner)]));
      return value;
    };
    const changed = cases
      .filter(({ inputs }) => /[:[,]-?\d/.test(JSON.stringify(inputs)))
      .map((reference) => {
        count = 0;
        return { ...reference, inputs: moved(reference.inputs) as typeof reference.inputs };
      });
    const passing = runReferences(adapters, changed).filter(({ kind }) => kind === 'passed');
    expect(passing.map(({ id }) => id)).toEqual(SAME_EVERYWHERE);
  });
});
