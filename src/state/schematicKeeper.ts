import type { Part } from '../core/circuit/part.ts';
import type { Project } from '../core/document/schema.ts';
import { wayOrder } from '../core/document/wayOrder.ts';
import type { Problem, Result } from '../core/messages/problem.ts';
import type { SchematicPlan } from '../core/schematic/plan.ts';

/** Draws a circuit: parts, the speakers in lane order, and the last plan, near which the new one should stay. */
export type DrawSchematic = (
  parts: readonly Part[],
  ways: readonly string[],
  previous: SchematicPlan | null,
) => Result<SchematicPlan>;

export interface Drawn {
  /** The last plan that could be drawn. */
  readonly schematic: SchematicPlan | null;
  readonly problems: readonly Problem[];
}

/** Draws again only when parts, their nodes or the lanes' order differ: a value that changes moves no wire. */
export function schematicKeeper(draw: DrawSchematic) {
  let parts: readonly Part[] = [];
  let ways: readonly string[] = [];
  let drawn: Drawn | null = null;

  return (project: Project): Drawn => {
    const order = wayOrder(project);
    const same = drawn !== null && sameCircuit(parts, project.network.parts) && alikeLists(ways, order);
    parts = project.network.parts;
    ways = order;
    if (drawn !== null && same) return drawn;
    const previous = drawn?.schematic ?? null;
    const result = draw(parts, ways, previous);
    drawn = result.ok ? { schematic: result.value, problems: [] } : { schematic: previous, problems: result.problems };
    return drawn;
  };
}

const alikeLists = (a: readonly string[], b: readonly string[]) =>
  a.length === b.length && a.every((entry, k) => entry === b[k]);

const sameCircuit = (a: readonly Part[], b: readonly Part[]): boolean =>
  a === b ||
  (a.length === b.length &&
    a.every((part, k) => {
      const other = b[k]!;
      return (
        part === other || (part.id === other.id && part.kind === other.kind && alikeLists(part.nodes, other.nodes))
      );
    }));
