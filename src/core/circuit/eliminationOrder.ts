export interface EliminationOrder {
  /** order[k] is the row eliminated k-th. */
  readonly order: Int32Array;
  /** For each k the later rows (as positions in the order, ascending) that row k is joined to, fill-in included. */
  readonly later: readonly (readonly number[])[];
}

/**
 * Minimum-degree order of a symmetric pattern, with its fill-in. `neighbours` is consumed. A row that a source drives
 * directly (`late`) comes a little later, since fewer rows then have a right-hand side.
 * Source: D. J. Rose, "A graph-theoretic study of the numerical solution of sparse positive definite systems", 1972 (from
 * memory).
 * @example eliminationOrder([new Set([1]), new Set([0])], new Set())
 */
export function eliminationOrder(neighbours: Set<number>[], late: ReadonlySet<number>): EliminationOrder {
  const size = neighbours.length;
  const order = new Int32Array(size);
  const position = new Int32Array(size).fill(-1);
  const reached: number[][] = [];
  for (let k = 0; k < size; k++) {
    let best = -1;
    for (let i = 0; i < size; i++) {
      if (position[i] !== -1) continue;
      if (best === -1 || cost(i) < cost(best)) best = i;
    }
    const around = [...neighbours[best]!];
    for (const i of around) {
      neighbours[i]!.delete(best);
      for (const j of around) if (i !== j) neighbours[i]!.add(j);
    }
    order[k] = best;
    position[best] = k;
    reached.push(around);
  }
  const later = reached.map((around) => around.map((i) => position[i]!).sort((a, b) => a - b));
  return { order, later };

  function cost(i: number): number {
    return neighbours[i]!.size + (late.has(i) ? 1.5 : 0);
  }
}
