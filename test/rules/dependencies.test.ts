import { describe, expect, it } from 'vitest';
import { textOf } from './tree.ts';

const { dependencies } = JSON.parse(textOf('package.json')) as { dependencies: Record<string, string> };

/** A row of a table of the guide names the package in its first cell and says in the next what it is for. */
const unexplained = (names: readonly string[], guide: string): string[] => {
  const rows = guide.split('\n').map((line) => line.split('|').map((cell) => cell.replaceAll('`', '').trim()));
  const explained = rows.filter(([, , reason]) => (reason ?? '').split(' ').length >= 2);
  return names.filter((name) => !explained.some(([, packages]) => packages?.split(/, */).includes(name)));
};

const addresses = (lock: string): string[] => lock.match(/"resolved": *"[a-z+]+:[^"]*"/g) ?? [];

describe('dependencies', () => {
  it('at run time have each a line in the guide with its reason', () => {
    expect(unexplained(Object.keys(dependencies), textOf('DEVELOPERS.md'))).toEqual([]);
    const guide = '| zod, zundo | reads documents | 24 kB |\n| idb | |\nmathjs reads expressions, says no table';
    expect(unexplained(['zod', 'zundo', 'idb', 'mathjs'], guide)).toEqual(['idb', 'mathjs']);
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
