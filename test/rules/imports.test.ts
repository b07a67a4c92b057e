import { describe, expect, it } from 'vitest';
import { coreRoomOf, cycleIn, forbidden } from './importRules.ts';
import { importsOf } from './syntax.ts';
import { filesOfTree, textOf } from './tree.ts';

const sources = filesOfTree().filter((path) => /^src\/.*\.tsx?$/.test(path));
const imports = sources.flatMap((path) => importsOf(path, textOf(path)).map((found) => ({ path, found })));

const graph = (nameOf: (path: string) => string | undefined): Map<string, Set<string>> => {
  const edges = new Map<string, Set<string>>();
  for (const { path, found } of imports) {
    const from = nameOf(path);
    const to = found.inProject ? nameOf(found.target) : undefined;
    if (from === undefined || to === undefined || from === to) continue;
    edges.set(from, (edges.get(from) ?? new Set()).add(to));
  }
  return edges;
};

describe('imports', () => {
  it('point one way', () => {
    const wrong = imports.flatMap(({ path, found }) => {
      const why = forbidden(path, found);
      return why === null ? [] : [`${path} -> ${found.target}: ${why}`];
    });
    expect(wrong).toEqual([]);
  });
  it('of the rooms in core make no round trip', () => {
    expect(cycleIn(graph(coreRoomOf))).toBeNull();
  });
  it('of the files in core make no round trip', () => {
    expect(cycleIn(graph((path) => (path.startsWith('src/core/') ? path : undefined)))).toBeNull();
  });
  it('of other files name an existing file with its ending', () => {
    const bare = imports.filter(
      ({ found }) => found.inProject && !/\.(ts|tsx|css|json|svg)(\?\w+)?$/.test(found.target),
    );
    expect(bare).toEqual([]);
  });
});

describe('the rules themselves', () => {
  const verdict = (path: string, text: string): (string | null)[] =>
    importsOf(path, text).map((found) => forbidden(path, found));

  it('see every way of bringing something in', () => {
    const text = [
      "import { a } from './a.ts';",
      "import type { B } from '../b/b.ts';",
      "import { type C } from 'c';",
      "export * from './d.ts';",
      "export type { E } from './e.ts';",
      "import './f.css';",
      "const g = await import('./g.ts');",
      "let h: import('./h.ts').H;",
      "new Worker(new URL('../worker/i.ts', import.meta.url));",
      "new URL('https://example.org');",
      'export const j = 1;',
    ].join('\n');
    expect(importsOf('src/core/math/x.ts', text)).toEqual([
      { target: 'src/core/math/a.ts', inProject: true, typeOnly: false },
      { target: 'src/core/b/b.ts', inProject: true, typeOnly: true },
      { target: 'c', inProject: false, typeOnly: true },
      { target: 'src/core/math/d.ts', inProject: true, typeOnly: false },
      { target: 'src/core/math/e.ts', inProject: true, typeOnly: true },
      { target: 'src/core/math/f.css', inProject: true, typeOnly: false },
      { target: 'src/core/math/g.ts', inProject: true, typeOnly: false },
      { target: 'src/core/math/h.ts', inProject: true, typeOnly: true },
      { target: 'src/core/worker/i.ts', inProject: true, typeOnly: false },
    ]);
  });

  it.each([
    ['src/core/math/a.ts', "import type { B } from '../../ui/b.ts'", 'core does not know ui'],
    ['src/core/math/a.ts', "import { line } from 'd3-shape'", 'src/core does not use the package d3-shape'],
    [
      'src/core/circuit/a.ts',
      "import type { B } from '../acoustics/b.ts'",
      'circuit and acoustics do not know each other',
    ],
    ['src/core/acoustics/a.ts', "import { B } from '../circuit/b.ts'", 'acoustics and circuit do not know each other'],
    [
      'src/core/document/a.ts',
      "import { B } from '../schematic/b.ts'",
      'document and schematic do not know each other',
    ],
    ['src/core/circuit/a.ts', "import { B } from '../speaker/b.ts'", 'circuit stands before speaker'],
    ['src/core/messages/a.ts', "import { B } from '../math/b.ts'", 'messages stands before math'],
    [
      'src/core/speaker/a.ts',
      "import { B } from '../index.ts'",
      'a room of core brings in the index of the whole core',
    ],
    ['src/core/misc/a.ts', "import { B } from '../math/b.ts'", 'core has no room misc'],
    ['src/core/units/a.ts', "import 'mathjs'", 'mathjs belongs in src/core/units/expression.ts alone'],
    ['src/app/a.ts', "import('mathjs/number')", 'mathjs belongs in src/core/units/expression.ts alone'],
    ['src/plot/a.ts', "import { B } from '../state/b.ts'", 'plot does not know state'],
    ['src/state/a.ts', "import { B } from '../worker/b.ts'", 'state knows the types of worker alone'],
    ['src/state/a.ts', "import { useState } from 'react'", 'src/state does not use the package react'],
    ['src/ui/a.tsx', "import { B } from '../app/b.ts'", 'ui does not know app'],
    ['src/ui/a.tsx', "import { B } from '../../test/b.ts'", 'src brings in a file from outside src'],
    ['src/a.ts', "import { B } from './core/b.ts'", 'src has no room for src/a.ts'],
  ])('refuse in %s: %s', (path, text, why) => {
    expect(verdict(path, text)).toEqual([why]);
  });

  it.each([
    ['src/core/index.ts', "export * from './speaker/simulate.ts'"],
    ['src/core/units/expression.ts', "import { create } from 'mathjs'"],
    ['src/core/document/a.ts', "import type { B } from '../circuit/b.ts'"],
    ['src/core/measured/a.ts', "import { B } from '../units/b.ts'"],
    ['src/state/a.ts', "import type { B } from '../worker/b.ts'"],
    ['src/app/a.ts', "import demo from '../../demo-data/a.json'"],
    ['src/ui/a.tsx', "import { createPortal } from 'react-dom'"],
  ])('allow in %s: %s', (path, text) => {
    expect(verdict(path, text)).toEqual([null]);
  });

  it('find a round trip and name it', () => {
    const edges = new Map([
      ['a', new Set(['b'])],
      ['b', new Set(['c', 'd'])],
      ['d', new Set(['a'])],
    ]);
    expect(cycleIn(edges)).toEqual(['a', 'b', 'd', 'a']);
    edges.delete('d');
    expect(cycleIn(edges)).toBeNull();
  });
});
