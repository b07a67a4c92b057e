import type { Part, PartKind } from '../circuit/part.ts';
import { type Memory, memoryOf } from './memory.ts';
import { openingsOf } from './openingsOf.ts';
import type { SchematicPlan } from './plan.ts';
import { returnNodes } from './returnNodes.ts';
import { leavesOf, type SpTree, someLeaf } from './spTree.ts';

export interface Edge {
  readonly kind: PartKind | 'opening';
  readonly nodes: readonly [string, string];
}

/** A circuit and its last drawing, as every step of the layout reads them. */
export interface CircuitView {
  readonly parts: readonly Part[];
  /** The parts, then the places where one was taken out and that stay open. A leaf's edge is an index of the parts. */
  readonly edges: readonly Edge[];
  /** The circuit's return, and every minus that several amplifiers share. */
  readonly returns: ReadonlySet<string>;
  readonly memory: Memory;
}

export function circuitView(parts: readonly Part[], previous?: SchematicPlan): CircuitView {
  const returns = returnNodes(parts);
  const openings = openingsOf(parts, previous, returns).map((nodes): Edge => ({ kind: 'opening', nodes }));
  return { parts, edges: [...parts, ...openings], returns, memory: memoryOf(parts, previous) };
}

export const partsIn = (view: CircuitView, tree: SpTree): Part[] =>
  leavesOf(tree).flatMap((leaf) => view.parts[leaf.edge] ?? []);

export const hasSpeaker = (view: CircuitView, tree: SpTree): boolean =>
  someLeaf(tree, (leaf) => view.parts[leaf.edge]?.kind === 'speaker');
