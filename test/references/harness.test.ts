import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Adapter, Json } from './adapter.ts';
import { adapterFor, loadAdapters, loadCases, OWN_CASES, type ReferenceCase, runReferences, takes } from './harness.ts';
import { report } from './report.ts';

const reference = (changes: Partial<ReferenceCase>): ReferenceCase => ({
  id: 'a-1',
  family: 'a',
  inputs: { x: 1 },
  expected: { y: 2 },
  tolerance: { abs: 0.1 },
  units: {},
  source: '',
  ...changes,
});
const adapter = (run: () => Json, requires = ['x'], allows: string[] = []): Adapter => ({
  family: 'a',
  requires,
  allows,
  run,
});
const doubling: Adapter = { family: 'a', requires: ['x'], run: ({ x }) => ({ y: (x as number) * 2 }) };

describe('an adapter takes a case', () => {
  it('of its family, with all that it requires and nothing that it does not know', () => {
    const both = adapter(() => null, ['x'], ['z']);
    expect(takes(both, { family: 'a', inputs: { x: 1 } })).toBe(true);
    expect(takes(both, { family: 'a', inputs: { x: 1, z: null } })).toBe(true);
    expect(takes(both, { family: 'b', inputs: { x: 1 } })).toBe(false);
    expect(takes(both, { family: 'a', inputs: { z: 1 } })).toBe(false);
    expect(takes(both, { family: 'a', inputs: { x: 1, w: 1 } })).toBe(false);
  });
  it('the one that requires most is chosen', () => {
    const wide = adapter(() => 'wide', ['x'], ['z']);
    const close = adapter(() => 'close', ['x', 'z']);
    expect(adapterFor([wide, close], reference({ inputs: { x: 1, z: 1 } }))).toBe(close);
    expect(adapterFor([close, wide], reference({ inputs: { x: 1, z: 1 } }))).toBe(close);
    expect(adapterFor([close, wide], reference({ inputs: { x: 1 } }))).toBe(wide);
  });
});

describe('loading', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'conewright-'));
    const file = (name: string, text: string) => writeFileSync(join(folder, name), text);
    file('one.ts', "export const adapter = { family: 'one', requires: [], run: () => null };");
    file('two.ts', "export const adapters = [{ family: 'two', requires: [], run: () => null }];");
    file('none.ts', 'export const other = 1;');
    file('throws.ts', "throw new Error('no core');");
    file('notes.md', 'not an adapter');
  });
  afterAll(() => rmSync(folder, { recursive: true }));
  it('takes one adapter or a list from each file, and tells which files are of no use', async () => {
    const { adapters, broken } = await loadAdapters(folder);
    expect(adapters.map(({ family }) => family)).toEqual(['one', 'two']);
    expect(broken).toEqual(['none.ts: exports neither adapter nor adapters', 'throws.ts: no core']);
  });
});

describe('a run', () => {
  it('tells passed, failed and not covered apart', () => {
    const cases = [
      reference({ id: 'right' }),
      reference({ id: 'wrong', expected: { y: 3 } }),
      reference({ id: 'other', family: 'b' }),
      reference({ id: 'keys', inputs: { x: 1, w: 2 } }),
    ];
    expect(runReferences([doubling], cases).map(({ id, kind }) => [id, kind])).toEqual([
      ['right', 'passed'],
      ['wrong', 'failed'],
      ['other', 'not covered'],
      ['keys', 'not covered'],
    ]);
  });
  it('an adapter that throws has failed, with its message, and the run goes on', () => {
    const throwing = adapter(() => {
      throw new RangeError('no such alignment');
    });
    const outcomes = runReferences([throwing], [reference({ id: 'one' }), reference({ id: 'two' })]);
    expect(outcomes).toMatchObject([
      { id: 'one', kind: 'failed', error: 'no such alignment' },
      { id: 'two', kind: 'failed' },
    ]);
  });
  it('an adapter that returns nothing has failed', () => {
    expect(runReferences([adapter(() => undefined as never)], [reference({})])[0]!.kind).toBe('failed');
  });
});

describe('the report', () => {
  it('has a row for each family, the failing leaf, and the counts as its last line', () => {
    const throwing = { ...doubling, family: 'c', run: () => JSON.parse('{') };
    const cases = [
      reference({}),
      reference({ id: 'a-2', expected: { y: 3 } }),
      reference({ id: 'b-1', family: 'b' }),
      reference({ id: 'c-1', family: 'c' }),
    ];
    const lines = report(runReferences([doubling, throwing], cases)).split('\n');
    expect(lines.at(-1)).toBe('1 passed, 2 failed, 1 not covered');
    expect(lines.map((line) => line.split(/\s+/).join(' '))).toEqual(
      expect.arrayContaining(['a 1 1 0', 'b 0 0 1', 'c 0 1 0', 'a-2 (a) failed']),
    );
    expect(lines.join('\n')).toMatch(/y: expected 3, got 2 \(off by 1, allowed 0\.1\)/);
    expect(lines.join('\n')).toMatch(/c-1 \(c\) failed: .*JSON/);
  });
});

it('a file of cases is a list of them or a record that holds one; anything else is refused', () => {
  expect(loadCases(OWN_CASES).every(({ id, family }) => id !== '' && family !== '')).toBe(true);
  expect(() => loadCases(new URL('../../package.json', import.meta.url).pathname)).toThrow('no list of cases');
});
