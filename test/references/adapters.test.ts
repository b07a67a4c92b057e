import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { arithmeticIn, forbiddenImports } from './adapterRules.ts';
import { ADAPTERS_FOLDER } from './harness.ts';

const files = readdirSync(ADAPTERS_FOLDER)
  .filter((name) => name.endsWith('.ts'))
  .map((name) => ({
    path: `test/references/adapters/${name}`,
    text: readFileSync(`${ADAPTERS_FOLDER}/${name}`, 'utf8'),
  }));

describe('adapters', () => {
  it('bring in the core, the plot, the conversions and the contract alone', () => {
    expect(files.flatMap(({ path, text }) => forbiddenImports(path, text).map((what) => `${path}: ${what}`))).toEqual(
      [],
    );
  });
  it('compute nothing themselves', () => {
    expect(files.flatMap(({ path, text }) => arithmeticIn(path, text).map((what) => `${path}: ${what}`))).toEqual([]);
  });
});

describe('the rules themselves', () => {
  const path = 'test/references/adapters/x.ts';
  it('refuse other imports', () => {
    const text = [
      "import { a } from '../../../src/core/acoustics/a.ts';",
      "import { b } from '../../../src/plot/b.ts';",
      "import { c } from '../convert.ts';",
      "import type { Adapter } from '../adapter.ts';",
      "import { readFileSync } from 'node:fs';",
      "import cases from '../cases.json';",
      "import { d } from './other.ts';",
      "import type { Workbench } from '../../../src/state/workbench.ts';",
    ].join('\n');
    expect(forbiddenImports(path, text)).toEqual([
      'node:fs',
      'test/references/cases.json',
      'test/references/adapters/other.ts',
      'src/state/workbench.ts',
    ]);
  });
  it.each(['a * b', 'a / b', 'a + b', 'a - b', 'a % b', 'a ** 2', '2 * a', '-a', 'x += a', 'x *= 2', 'Math'])(
    'refuse %s',
    (expression) => {
      const text = expression === 'Math' ? 'const y = Math.sqrt(a);' : `const f = () => { ${expression}; };`;
      expect(arithmeticIn(path, text)).toEqual([expression]);
    },
  );
  it.each(["'a' + b", "a + 'b' + c", 'list[i + 1]', 'list[i - 1]', 'i++', 'scaled(x, -3)', 'a < b', '`a` + b'])(
    'allow %s',
    (expression) => {
      expect(arithmeticIn(path, `const f = () => { ${expression}; };`)).toEqual([]);
    },
  );
});
