import { describe, expect, it } from 'vitest';
import { partsFeedingAlone } from '../../../../src/core/document/graph/partsFeedingAlone.ts';
import { speaker, twoWay } from '../twoWay.ts';

describe('partsFeedingAlone', () => {
  const { parts } = twoWay.network;
  const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id).sort();
  const tweeter = parts.find(({ id }) => id === 'LS2')!;

  it('takes the largest piece, in whatever order the parts are listed', () => {
    expect(ids(partsFeedingAlone(parts, tweeter))).toEqual(['C2', 'J1', 'L2', 'R1', 'R2']);
    expect(ids(partsFeedingAlone([...parts].reverse(), tweeter))).toEqual(['C2', 'J1', 'L2', 'R1', 'R2']);
  });

  it('finds nothing where another speaker hangs on the same node', () => {
    const pair = [...parts, speaker('LS3', ['t2', '0'], 'tweeter')];
    expect(partsFeedingAlone(pair, tweeter)).toEqual([]);
  });
});
