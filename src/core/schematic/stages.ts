import { type CircuitView, partsIn } from './circuitView.ts';
import { addColumn, addLeg, addPass, emptyRow, hotEnd, innerReturn, lastColumn, type Row } from './row.ts';
import type { SpLeaf, SpTree } from './spTree.ts';
import { type Step, unfold } from './unfold.ts';

/**
 * A row and what it feeds: a way's row ends at its speaker; a shared row stands in the trunk and feeds further stages,
 * all side by side (parallel) or one after another from the row's end to its return (series).
 */
export interface Stage {
  readonly row: Row;
  readonly speaker: SpLeaf | null;
  readonly split: 'parallel' | 'series';
  readonly children: readonly Stage[];
}

/** Turns a series-parallel tree into stages; `amplifier` is hung at the very left. */
export function stagesOf(
  view: CircuitView,
  tree: SpTree | null,
  amplifier: SpLeaf | null,
  hot: string,
  ret: string,
): Stage {
  const { steps, end } = tree === null ? { steps: [], end: null } : unfold(view, tree);
  const first: Step[] = amplifier === null ? [] : [{ leg: amplifier }];
  if (end === null) return wayOrTrunk([...first, ...steps], hot, ret, []);
  if (end.shape === 'leaf') {
    const own = leadingJumpers(view, steps);
    const shared = [...first, ...steps.slice(0, own)];
    const lane = (from: string, to: string): Stage => laneOf(steps.slice(own), end, from, to);
    return shared.length === 0 ? lane(hot, ret) : trunk(shared, hot, ret, 'parallel', (from, to) => [lane(from, to)]);
  }
  return trunk([...first, ...steps], hot, ret, end.shape, () =>
    end.children.map((child) => stagesOf(view, child, null, child.from, child.to)),
  );
}

/** Links between terminals belong to the trunk, with what comes before them. */
function leadingJumpers(view: CircuitView, steps: readonly Step[]): number {
  const isJumper = (tree: SpTree | null): boolean =>
    tree === null || partsIn(view, tree).every((part) => part.kind === 'jumper');
  let count = 0;
  for (const [index, step] of steps.entries()) {
    if ('leg' in step) continue;
    if (!isJumper(step.block) || !isJumper(step.below) || partsIn(view, (step.block ?? step.below)!).length === 0)
      break;
    count = index + 1;
  }
  return count;
}

function laneOf(steps: readonly Step[], speaker: SpLeaf, hot: string, ret: string): Stage {
  const row = filled(emptyRow(hot, ret), steps);
  if (row.gaps.length === 0 || lastColumn(row).leg !== null || lastColumn(row).rail !== row.rails.length - 1)
    addColumn(row);
  return { row, speaker, split: 'parallel', children: [] };
}

const wayOrTrunk = (steps: readonly Step[], hot: string, ret: string, children: readonly Stage[]): Stage => ({
  row: filled(emptyRow(hot, ret), steps),
  speaker: null,
  split: 'parallel',
  children,
});

/** A part in the return of a shared row cuts it: legs to the outer return and to the inner one do not share a row. */
function trunk(
  steps: readonly Step[],
  hot: string,
  ret: string,
  split: Stage['split'],
  childrenOf: (hot: string, ret: string) => readonly Stage[],
): Stage {
  const cut = steps.findIndex(
    (step, index) => 'below' in step && step.below !== null && steps.slice(0, index).some((other) => 'leg' in other),
  );
  const row = filled(emptyRow(hot, ret), cut < 0 ? steps : steps.slice(0, cut));
  const [from, to] = [hotEnd(row), innerReturn(row)];
  if (cut < 0) return { row, speaker: null, split, children: childrenOf(from, to) };
  return { row, speaker: null, split: 'parallel', children: [trunk(steps.slice(cut), from, to, split, childrenOf)] };
}

function filled(row: Row, steps: readonly Step[]): Row {
  for (const step of steps) {
    if ('leg' in step) addLeg(row, step.leg);
    else addPass(row, step.block, step.below);
  }
  return row;
}
