import { describe, expect, it } from 'vitest';
import { filesOfTree, textOf } from './tree.ts';
import { forbiddenWords } from './words.ts';

const isText = (path: string): boolean =>
  /\.(tsx?|mjs|js|json|md|html|css|svg|txt|csv)$|(^|\/)(run|LICENSE|\.npmrc)$/.test(path);

describe('words that must not stand in the tree', () => {
  it('do not', () => {
    const found = filesOfTree()
      .filter(isText)
      .flatMap((path) =>
        forbiddenWords(path, textOf(path)).map(({ what, line, text }) => `${path}:${line} ${what}: ${text}`),
      );
    expect(found).toEqual([]);
  });

  // Put together from pieces, as the rules are.
  it.each([
    ['src/core/a.ts', `// ${'TO'}${'DO'}: later`, 'left-over'],
    ['src/ui/a.tsx', `throw new Error('${'Not '}${'implemented'}')`, 'left-over'],
    ['README.md', `${'coming '}${'soon'}`, 'left-over'],
    ['src/ui/a.tsx', `// @ts-${'ignore'}`, 'check switched off'],
    ['test/a.ts', `// ${'biome'}-ignore lint: because`, 'check switched off'],
    ['src/core/a.ts', `const b = c as ${'an'}y;`, 'any'],
    ['src/core/a.ts', `(b: ${'an'}y) => b`, 'any'],
    ['src/core/a.ts', `let b: ${'an'}y[]`, 'any'],
    ['test/a.test.ts', `it.${'only'}('x', () => {})`, 'skipped or focused test'],
    ['test/a.test.ts', `describe.${'skip'}('x', () => {})`, 'skipped or focused test'],
    ['test/a.test.ts', `x${'it'}('x', () => {})`, 'skipped or focused test'],
    ['test/a.test.ts', `ex${'pect'}(elapsed).toBeLessThan(5)`, 'timed test'],
    ['src/core/a.ts', 'const a = Math.random();', 'clock, locale or chance'],
    ['src/core/a.ts', 'const a = Date.now();', 'clock, locale or chance'],
    ['src/core/a.ts', 'a.toLocaleString()', 'clock, locale or chance'],
    ['DEVELOPERS.md', `see /${'tmp'}/notes`, 'path of a machine'],
    ['.ci/a.mjs', `'/${'root'}/a'`, 'path of a machine'],
    ['README.md', `from registry.${'npm'}`, 'registry'],
  ])('are found in %s: %s', (path, text, what) => {
    expect(forbiddenWords(path, `first line\n${text}\n`)).toMatchObject([{ what, line: 2 }]);
  });

  it.each([
    ['src/ui/a.tsx', 'const a = Math.random();'],
    ['src/core/a.ts', 'any number of ports, as any builder knows'],
    ['src/core/a.ts', "import { work } from './work/index.ts';"],
    ['test/a.test.ts', 'xs.only; // the only one'],
  ])('let pass in %s: %s', (path, text) => {
    expect(forbiddenWords(path, text)).toEqual([]);
  });
});
