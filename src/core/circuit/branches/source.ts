import type { SourceBranch } from '../branch.ts';

/**
 * A voltage source with a series resistance, which may be 0; its minus node is then the return.
 * @example source('V1', ['amp', '0'], 2.83, 0.05)
 */
export const source = (
  id: string,
  nodes: readonly [string, string],
  voltageV: number,
  resistanceOhm: number,
): SourceBranch => ({ kind: 'source', id, nodes, voltageV, resistanceOhm });
