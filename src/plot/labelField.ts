/** A rectangle in pixels, y downwards. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Two boxes share more than an edge. */
export const boxesOverlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const COLUMN_PX = 6;
const CROSSED = 20;
const NEARER_TO_ANOTHER = 60;
const TOGETHER_PX = 9;
const TOGETHER = 45;
const TOWARDS_LEFT = 24;

/** Curves sampled on columns of six pixels, and what it costs to put a text over or beside them. */
export class LabelField {
  private readonly left: number;
  private readonly width: number;
  private readonly rows: readonly Float64Array[];

  constructor(curves: readonly { readonly xsPx: ArrayLike<number>; readonly ysPx: ArrayLike<number> }[], area: Box) {
    this.left = area.left;
    this.width = area.right - area.left;
    const columns = Math.max(1, Math.ceil(this.width / COLUMN_PX) + 1);
    this.rows = curves.map((curve) => sampled(curve.xsPx, curve.ysPx, area.left, columns));
  }

  /** Height of a curve at x, NaN where it has none. */
  heightAt(curve: number, x: number): number {
    return this.rows[curve]?.[Math.round((x - this.left) / COLUMN_PX)] ?? Number.NaN;
  }

  /**
   * What a text of curve `own` costs in `box`: a share for every curve that it hides, a large sum when its middle lies
   * nearer to another curve than to its own, less where another runs together with its own, and a little for every pixel away from the right-hand end.
   */
  cost(own: number, box: Box): number {
    const first = Math.max(0, Math.floor((box.left - this.left) / COLUMN_PX));
    const last = Math.ceil((box.right - this.left) / COLUMN_PX);
    const middleX = (box.left + box.right) / 2;
    const middleY = (box.top + box.bottom) / 2;
    const ownY = this.heightAt(own, middleX);
    const ownDistance = Math.abs(ownY - middleY);
    let cost = TOWARDS_LEFT * (1 - (box.right - this.left) / this.width);
    for (const [index, row] of this.rows.entries()) {
      let hidden = 0;
      for (let column = first; column <= last; column++) {
        const y = row[column] ?? Number.NaN;
        if (y > box.top - 1 && y < box.bottom + 1) hidden++;
      }
      cost += hidden * CROSSED;
      if (index === own) continue;
      const y = row[Math.round((middleX - this.left) / COLUMN_PX)] ?? Number.NaN;
      if (Math.abs(y - middleY) < ownDistance) cost += NEARER_TO_ANOTHER;
      if (Math.abs(y - ownY) < TOGETHER_PX) cost += TOGETHER;
    }
    return cost;
  }
}

function sampled(xsPx: ArrayLike<number>, ysPx: ArrayLike<number>, left: number, columns: number): Float64Array {
  const row = new Float64Array(columns).fill(Number.NaN);
  let point = 0;
  for (let column = 0; column < columns; column++) {
    const x = left + column * COLUMN_PX;
    while (point + 1 < xsPx.length && (xsPx[point + 1] ?? 0) < x) point++;
    const fromX = xsPx[point] ?? Number.NaN;
    const toX = xsPx[point + 1] ?? Number.NaN;
    if (!(x >= fromX && x <= toX)) continue;
    const share = toX > fromX ? (x - fromX) / (toX - fromX) : 0;
    row[column] = (ysPx[point] ?? Number.NaN) * (1 - share) + (ysPx[point + 1] ?? Number.NaN) * share;
  }
  return row;
}
