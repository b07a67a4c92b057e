import type { Sheet } from './sheet.ts';
import { around, isOwn, layWire, mayPass } from './wiring.ts';

// Costs of a wire in half units.
const stepCost = 1;
const bendCost = 6;
const crossCost = 8;
/** For running half a unit beside another wire, a symbol or a text. */
const crampedCost = 2;

/** Joins the pieces of every node that earlier wires left apart; returns whether it could join them all. */
export function routeNodes(sheet: Sheet): boolean {
  let search: Search | null = null;
  for (let node = 1; node < sheet.pointsOf.length; node++) {
    for (;;) {
      const islands = islandsOf(sheet, node);
      if (islands.length < 2) break;
      search ??= newSearch(sheet);
      const path = shortestPath(sheet, search, node, islands);
      if (path === null || !layWire(sheet, node, path)) return false;
    }
  }
  return true;
}

/** Connected pieces of a node's wires and pins, those without a pin left out; the smallest first, for a short search. */
function islandsOf(sheet: Sheet, node: number): number[][] {
  const seen = new Set<number>();
  const islands: number[][] = [];
  for (const start of sheet.pointsOf[node]!) {
    if (sheet.pins[start] !== node || seen.has(start)) continue;
    const island = [start];
    seen.add(start);
    for (let k = 0; k < island.length; k++) {
      const at = island[k]!;
      const [left, right, up, down] = around(sheet, at);
      const reach = (arm: number, next: number): void => {
        if (arm !== node || seen.has(next)) return;
        seen.add(next);
        island.push(next);
      };
      reach(left, at - 1);
      reach(right, at + 1);
      reach(up, at - sheet.columns);
      reach(down, at + sheet.columns);
    }
    islands.push(island);
  }
  return islands.sort((a, b) => a.length - b.length);
}

/** Working arrays of the search, one entry for a point reached level (2 × point) and one upright (2 × point + 1). */
interface Search {
  readonly cost: Int32Array;
  readonly from: Int32Array;
  readonly goal: Uint8Array;
}

const newSearch = (sheet: Sheet): Search => ({
  cost: new Int32Array(2 * sheet.solid.length),
  from: new Int32Array(2 * sheet.solid.length),
  goal: new Uint8Array(sheet.solid.length),
});

/**
 * Cheapest way from the first island to any other, null where there is none: A* over a queue of buckets by cost, the
 * rest of the way estimated as the distance to the box around all goals.
 */
function shortestPath(sheet: Sheet, search: Search, node: number, islands: readonly number[][]): number[] | null {
  const { cost, from, goal } = search;
  cost.fill(0x7fffffff);
  goal.fill(0);
  const [home, ...others] = islands as [number[], ...number[][]];
  for (const island of others) for (const at of island) if (isOwn(sheet, node, at)) goal[at] = 1;
  const estimate = distanceTo(sheet, others);
  const buckets: number[][] = [];
  const visit = (state: number, price: number, origin: number): void => {
    if (price >= cost[state]!) return;
    cost[state] = price;
    from[state] = origin;
    const whole = price + estimate(state >> 1);
    while (buckets.length <= whole) buckets.push([]);
    buckets[whole]!.push(state);
  };
  for (const at of home) {
    if (!isOwn(sheet, node, at)) continue;
    visit(2 * at, 0, -1);
    visit(2 * at + 1, 0, -1);
  }
  for (let whole = 0; whole < buckets.length; whole++) {
    for (const state of buckets[whole]!) {
      const at = state >> 1;
      const price = cost[state]!;
      if (price + estimate(at) !== whole) continue;
      const isLevel = (state & 1) === 0;
      if (goal[at] === 1) return pathTo(from, state);
      const isFree = isOwn(sheet, node, at);
      if (isFree) visit(state ^ 1, price + (from[state] === -1 ? 0 : bendCost), from[state]!);
      const stride = isLevel ? 1 : sheet.columns;
      for (const next of [at - stride, at + stride]) {
        if (isRim(sheet, next) || !mayPass(sheet, node, next, isLevel)) continue;
        const isCrossing = !isOwn(sheet, node, next);
        const extra = (isCrossing ? crossCost : 0) + (isCramped(sheet, node, next, isLevel) ? crampedCost : 0);
        visit(2 * next + (state & 1), price + stepCost + extra, state);
      }
    }
  }
  return null;
}

/** Steps from a point to the box around the points of some islands. */
function distanceTo({ columns }: Sheet, islands: readonly (readonly number[])[]): (at: number) => number {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const at of islands.flat()) {
    const [r, c] = [Math.floor(at / columns), at % columns];
    [left, right, top, bottom] = [Math.min(left, c), Math.max(right, c), Math.min(top, r), Math.max(bottom, r)];
  }
  return (at) => {
    const [r, c] = [Math.floor(at / columns), at % columns];
    return Math.max(0, left - c, c - right) + Math.max(0, top - r, r - bottom);
  };
}

const isRim = ({ columns, rows }: Sheet, at: number): boolean => {
  const [r, c] = [Math.floor(at / columns), at % columns];
  return r < 1 || c < 1 || r > rows - 2 || c > columns - 2;
};

function isCramped(sheet: Sheet, node: number, at: number, isLevel: boolean): boolean {
  const side = isLevel ? sheet.columns : 1;
  const along = isLevel ? sheet.rightward : sheet.downward;
  return [at - side, at + side].some(
    (beside) => sheet.solid[beside] !== 0 || (along[beside] !== 0 && along[beside] !== node),
  );
}

/** The turn at a point shares its origin with the state that reached it, so a path lists every point once. */
function pathTo(from: Int32Array, goal: number): number[] {
  const path: number[] = [];
  for (let state = goal; state !== -1; state = from[state]!) path.push(state >> 1);
  return path;
}
