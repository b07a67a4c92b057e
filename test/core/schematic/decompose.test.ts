import { describe, expect, it } from 'vitest';
import { circuitView, partsIn } from '../../../src/core/schematic/circuitView.ts';
import { decompose } from '../../../src/core/schematic/decompose.ts';
import type { SpTree } from '../../../src/core/schematic/spTree.ts';
import { partsFrom } from './partsFrom.ts';

/** The tree as text: dots for series, bars for parallel, an underscore for an open place. */
function written(text: string): { tree: string; links: string[] } {
  const parts = partsFrom(text);
  const view = circuitView(parts);
  const leaves = parts.map(({ nodes: [from, to] }, edge): SpTree => ({ shape: 'leaf', edge, from, to }));
  const { tree, links } = decompose(view, leaves, ['in', '0']);
  const write = (piece: SpTree): string =>
    piece.shape === 'leaf'
      ? (parts[piece.edge]?.id ?? '_')
      : `(${piece.children.map(write).join(piece.shape === 'series' ? '.' : '|')})`;
  return {
    tree: tree === null ? '' : write(tree),
    links: links.map((link) =>
      partsIn(view, link)
        .map((part) => part.id)
        .join(' '),
    ),
  };
}

describe('a network as series and parallel joins with links', () => {
  it('needs no link for a ladder', () => {
    const { tree, links } = written('C1 in a\nL1 a 0\nR1 a b\nLS1 b 0');
    expect(tree).toBe('(C1.(L1|(R1.LS1)))');
    expect(links).toEqual([]);
  });

  it('takes out the bridge of a bridged T, not its stem', () => {
    expect(written('R1 in a\nR2 a b\nC1 a 0\nC2 in b\nLS1 b 0').links).toEqual(['C2']);
  });

  it('takes out what lies between two ways, as one piece, not what feeds them', () => {
    const ways = 'C1 in a\nL1 a 0\nLS1 a 0\nL2 in b\nC2 b 0\nLS2 b 0';
    expect(written(`${ways}\nR1 a b`).links).toEqual(['R1']);
    expect(written(`R1 a x\n${ways}\nC9 x b`).links).toEqual(['R1 C9']);
  });

  it('takes a bridged T and a part between ways apart from each other', () => {
    const { links } = written(
      'C1 in a\nL1 a 0\nR1 a b\nR2 b c\nC2 a c\nLS1 c 0\nL2 in d\nC3 d 0\nLS2 d 0\nR4 a d\nR3 b 0',
    );
    expect(links.sort()).toEqual(['C2', 'R4']);
  });

  it('lets a loose end hang open from its node', () => {
    expect(written('L1 in a\nR1 a x\nLS1 a 0').tree).toBe('(L1.(LS1|(R1._)))');
  });
});
