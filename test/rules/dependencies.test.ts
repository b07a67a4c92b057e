import { describe, expect, it } from 'vitest';
import { inTree, textOf } from './tree.ts';

const { dependencies } = JSON.parse(textOf('package.json')) as { dependencies: Record<string, string> };

/** A line of the guide names the package as code and says more than its name. */
const unexplained = (names: readonly string[], guide: string): string[] =>
  names.filter(
    (name) =>
      !guide
        .split('\n')
        .some((line) => line.includes(`\`${name}\``) && line.replaceAll('`', '').length > name.length + 30),
  );

const addresses = (lock: string): string[] => lock.match(/"resolved": *"[a-z+]+:[^"]*"/g) ?? [];

describe('dependencies', () => {
  it('at run time have each a line in the guide with its reason', () => {
    if (inTree('DEVELOPERS.md')) expect(unexplained(Object.keys(dependencies), textOf('DEVELOPERS.md'))).toEqual([]);
    const guide =
      '- `zod`: reads documents at every boundary; 24 kB.\n- `idb`\nzundo undoes, at length, without its quotes';
    expect(unexplained(['zod', 'idb', 'zundo'], guide)).toEqual(['idb', 'zundo']);
  });

  it('are locked without addresses', () => {
    expect(addresses(textOf('package-lock.json'))).toEqual([]);
    expect(addresses('"version": "1.0.0", "resolved": "https://example.org/a.tgz"')).toHaveLength(1);
    expect(textOf('.npmrc')).toContain('omit-lockfile-registry-resolved=true');
  });

  it('that were locked are those that package.json asks for', () => {
    const lock = JSON.parse(textOf('package-lock.json'));
    const own = JSON.parse(textOf('package.json'));
    expect(lock.packages[''].dependencies).toEqual(own.dependencies);
    expect(lock.packages[''].devDependencies).toEqual(own.devDependencies);
  });
});
