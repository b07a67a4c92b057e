import { describe, expect, it } from 'vitest';
import { type Migration, migrate, migrations } from '../../../../src/core/document/file/migrate.ts';
import { projectSchema } from '../../../../src/core/document/schema.ts';
import { word } from '../../../../src/core/messages/word.ts';
import { deepFreeze } from '../deepFreeze.ts';
import { expectWorded } from '../edits.ts';

/** Three made-up steps: a field renamed, one moved into a group, one given a default. */
const steps: readonly Migration[] = [
  ({ title, ...rest }) => ({ ...rest, version: 2, name: title }),
  ({ driveV, ...rest }) => ({ ...rest, version: 3, chain: { driveV } }),
  (document) => ({ ...document, version: 4, snapshots: [] }),
];
const first = deepFreeze({ format: 'x', version: 1, title: 'Old', driveV: 2.83 });

describe('migrate', () => {
  it('ends at the version that the schema reads', () => {
    expect(projectSchema.shape.version.def.values).toEqual([migrations.length + 1]);
  });

  it('carries every older version forward, one step after the other', () => {
    const newest = { format: 'x', version: 4, name: 'Old', chain: { driveV: 2.83 }, snapshots: [] };
    expect(migrate(first, steps)).toEqual({ ok: true, value: newest });
    const third = { format: 'x', version: 3, name: 'Old', chain: { driveV: 2.83 } };
    expect(migrate(third, steps)).toEqual({ ok: true, value: newest });
  });

  it('gives the present version back untouched', () => {
    const present = { version: 4 };
    const result = migrate(present, steps);
    expect(result.ok && result.value).toBe(present);
  });

  it('refuses newer versions and what is no version', () => {
    for (const [version, code] of [
      [5, 'newer-version'],
      [0, 'bad-version'],
      [1.5, 'bad-version'],
      ['1', 'bad-version'],
      [undefined, 'bad-version'],
    ] as const) {
      const result = migrate({ version }, steps);
      if (result.ok) throw new Error(`${version} was accepted.`);
      expect(result.problems.map((flaw) => flaw.code)).toEqual([`document.${code}`]);
      if (version !== undefined) expectWorded(result.problems[0]!);
    }
  });

  it('says which step failed and why', () => {
    const failing: Migration = () => {
      throw new Error('there is no driver');
    };
    const result = migrate(first, [steps[0]!, failing]);
    expect(result.ok ? '' : word(result.problems[0]!).sentence).toBe(
      'The project of format 2 could not be carried over to format 3: there is no driver.',
    );
  });

  it('does not let a step forget its version', () => {
    expect(() => migrate(first, [(document) => document])).toThrow('must give version 2');
  });
});
