import { describe, expect, it } from 'vitest';
import { circuitView } from '../../../src/core/schematic/circuitView.ts';
import { splitSystems } from '../../../src/core/schematic/splitSystems.ts';
import { partsFrom } from './partsFrom.ts';

function split(text: string) {
  const parts = partsFrom(text);
  const { systems, links, shorted } = splitSystems(circuitView(parts));
  const ids = (edges: readonly number[]): string => edges.map((edge) => parts[edge]!.id).join(' ');
  return {
    systems: systems.map(({ hot, ret, amplifier, edges }) => ({
      hot,
      ret,
      fed: amplifier === null ? null : parts[amplifier]!.id,
      parts: ids(edges),
    })),
    links: ids(links),
    shorted: ids(shorted),
  };
}

describe('what belongs to which amplifier', () => {
  it('two channels that share only the return are two systems', () => {
    expect(split('A1 x 0\nA2 y 0\nC1 x a\nLS1 a 0\nL1 y b\nLS2 b 0').systems).toEqual([
      { hot: 'x', ret: '0', fed: 'A1', parts: 'C1 LS1' },
      { hot: 'y', ret: '0', fed: 'A2', parts: 'L1 LS2' },
    ]);
  });

  it('a part between two channels is a link, whichever end comes first', () => {
    const both = split('A1 x 0\nA2 y 0\nC1 x a\nLS1 a 0\nL1 y b\nLS2 b 0\nR1 b a');
    expect(both.links).toBe('R1');
    expect(both.systems.map(({ parts }) => parts)).toEqual(['C1 LS1', 'L1 LS2']);
  });

  it('an amplifier with plus and return swapped feeds through its other end', () => {
    expect(split('A1 0 in\nLS1 in 0').systems).toEqual([{ hot: 'in', ret: '0', fed: 'A1', parts: 'LS1' }]);
  });

  it('a piece without an amplifier is fed where its ways part', () => {
    expect(split('C1 in a\nL2 a 0\nLS1 a 0\nL1 in b\nC2 b 0\nLS2 b 0').systems).toEqual([
      { hot: 'in', ret: '0', fed: null, parts: 'C1 L2 LS1 L1 C2 LS2' },
    ]);
  });

  it('a part on one node with both ends is set aside, a speaker so shorted is a system of its own', () => {
    const whole = split('A1 in 0\nLS1 in 0\nR1 in in\nLS2 in in');
    expect(whole.shorted).toBe('R1');
    expect(whole.systems).toContainEqual({ hot: 'in', ret: 'in', fed: null, parts: 'LS2' });
  });

  it('without a return the amplifier gives it', () => {
    expect(split('A1 p m\nL1 p a\nLS1 a m').systems).toEqual([{ hot: 'p', ret: 'm', fed: 'A1', parts: 'L1 LS1' }]);
  });
});
