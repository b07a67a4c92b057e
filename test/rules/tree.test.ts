import { describe, expect, it } from 'vitest';
import { filesOfTree, inTree, textOf } from './tree.ts';

const KNOWN_AT_TOP = new Set([
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'vite.config.ts',
  'index.html',
  'biome.json',
  '.npmrc',
  '.gitignore',
  '.ci',
  'src',
  'test',
  'public',
  'demo-data',
]);

const MOST_LINES = 400;
/** Tables of data, each by name: nothing in them is to be read from top to bottom. */
const TABLES: readonly string[] = [];

const MOST_README_LINES = 40;
const ROOMS = ['core', 'plot', 'state', 'ui'];

const linesOf = (text: string): number => text.replace(/\n$/, '').split('\n').length;

const tooLong = (files: readonly { path: string; text: string }[]): string[] =>
  files
    .filter(({ path }) => /\.(tsx?|m?js|css)$/.test(path) && !TABLES.includes(path))
    .filter(({ text }) => linesOf(text) > MOST_LINES)
    .map(({ path, text }) => `${path}: ${linesOf(text)} lines`);

const unknownAtTop = (paths: readonly string[]): string[] => [
  ...new Set(paths.map((path) => path.split('/')[0]!).filter((name) => !KNOWN_AT_TOP.has(name))),
];

describe('the tree', () => {
  const paths = filesOfTree();
  it('has known entries alone at its top', () => {
    expect(unknownAtTop(paths)).toEqual([]);
    expect(unknownAtTop(['src/a.ts', 'scripts/b.ts', 'notes.md'])).toEqual(['scripts', 'notes.md']);
  });

  it(`has no source of more than ${MOST_LINES} lines, tables of data excepted`, () => {
    expect(tooLong(paths.map((path) => ({ path, text: textOf(path) })))).toEqual([]);
    expect(tooLong([{ path: 'src/a.ts', text: 'x\n'.repeat(MOST_LINES) }])).toEqual([]);
    expect(tooLong([{ path: 'src/a.ts', text: 'x\n'.repeat(MOST_LINES + 1) }])).toEqual(['src/a.ts: 401 lines']);
  });

  it('has every table of data that is excepted', () => {
    expect(TABLES.filter((path) => !inTree(path))).toEqual([]);
  });

  it.each(ROOMS)(`has in src/%s a README of at most ${MOST_README_LINES} lines`, (room) => {
    const readme = `src/${room}/README.md`;
    expect(inTree(readme), `${readme} is missing`).toBe(true);
    expect(linesOf(textOf(readme))).toBeLessThanOrEqual(MOST_README_LINES);
  });

  it('has a core without DOM, Node and clock: its compiler settings know ECMAScript alone', () => {
    const { compilerOptions } = JSON.parse(textOf('src/core/tsconfig.json'));
    expect(compilerOptions.lib.every((name: string) => /^ES\d+$/.test(name))).toBe(true);
    expect(compilerOptions.types).toEqual([]);
  });
});
