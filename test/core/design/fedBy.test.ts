import { expect, it } from 'vitest';
import type { Part } from '../../../src/core/circuit/part.ts';
import { fedBy } from '../../../src/core/design/fedBy.ts';
import { demoProject } from './demoProject.ts';

const part = (kind: Part['kind'], id: string, ...nodes: [string, string]): Part =>
  ({ kind, id, nodes }) as unknown as Part;

it('one amplifier feeds every speaker of a demonstration', () => {
  const { parts } = demoProject('reading-room').network;
  expect([...fedBy(parts)].sort()).toEqual([
    ['LS1', 'V1'],
    ['LS2', 'V1'],
    ['LS3', 'V1'],
  ]);
});

it('two amplifiers on one return feed their own speakers, through parts and speakers in series; what hangs free is fed by none', () => {
  const parts = [
    part('amplifier', 'V1', 'a', '0'),
    part('amplifier', 'V2', 'b', '0'),
    part('inductor', 'L1', 'a', 'c'),
    part('speaker', 'LS1', 'c', 'd'),
    part('speaker', 'LS2', 'd', '0'),
    part('capacitor', 'C1', 'b', 'e'),
    part('speaker', 'LS3', '0', 'e'),
    part('speaker', 'LS4', 'f', 'g'),
  ];
  expect([...fedBy(parts)]).toEqual([
    ['LS1', 'V1'],
    ['LS2', 'V1'],
    ['LS3', 'V2'],
  ]);
});
