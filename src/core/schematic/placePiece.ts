import { draw, type Pen, setDown } from './draft.ts';
import { horizontalReach, partAcross, partLength, rowGap, toHalf } from './metrics.ts';
import { gapBetween, levelSize, uprightSize } from './pieceSize.ts';
import { openEdge, type SpTree } from './spTree.ts';

/** Draws a piece downwards at `x`, its ends at `top` and `bottom`; what is shorter stands in the middle. */
export function placeUpright(pen: Pen, tree: SpTree, x: number, top: number, bottom: number): void {
  const { view, draft } = pen;
  if (tree.shape === 'leaf') {
    if (tree.edge === openEdge) return;
    const y = toHalf((top + bottom) / 2);
    setDown(pen, tree.edge, tree.from, { x, y }, 'vertical');
    draw(draft, tree.from, [x, top], [x, y - partLength / 2]);
    draw(draft, tree.to, [x, y + partLength / 2], [x, bottom]);
    return;
  }
  const sizes = tree.children.map((child) => uprightSize(view, child));
  const { height } = uprightSize(view, tree);
  if (tree.shape === 'series') {
    let y = toHalf((top + bottom - height) / 2);
    draw(draft, tree.from, [x, top], [x, y]);
    tree.children.forEach((child, k) => {
      placeUpright(pen, child, x, y, y + sizes[k]!.height);
      y += sizes[k]!.height;
      const lower = tree.children[k + 1];
      const next = lower === undefined ? bottom : y + gapBetween(child, lower);
      draw(draft, child.to, [x, y], [x, next]);
      y = next;
    });
    return;
  }
  const upper = toHalf((top + bottom - height) / 2);
  const lower = upper + height;
  draw(draft, tree.from, [x, top], [x, upper]);
  draw(draft, tree.to, [x, lower], [x, bottom]);
  let axis = x;
  tree.children.forEach((child, k) => {
    draw(draft, tree.from, [x, upper], [axis, upper]);
    draw(draft, tree.to, [x, lower], [axis, lower]);
    placeUpright(pen, child, axis, upper, lower);
    axis += sizes[k]!.right + partAcross / 2;
  });
}

/** Draws a piece from `left` to `right` in the row at `y`; what is shorter stands in the middle. */
export function placeLevel(pen: Pen, tree: SpTree, left: number, right: number, y: number): void {
  const { draft } = pen;
  if (tree.shape === 'leaf') {
    if (tree.edge === openEdge) return;
    const x = toHalf((left + right) / 2);
    setDown(pen, tree.edge, tree.from, { x, y }, 'horizontal');
    draw(draft, tree.from, [left, y], [x - partLength / 2, y]);
    draw(draft, tree.to, [x + partLength / 2, y], [right, y]);
    return;
  }
  const sizes = tree.children.map(levelSize);
  if (tree.shape === 'series') {
    const spare = right - left - levelSize(tree).width;
    let used = 0;
    tree.children.forEach((child, k) => {
      const from = left + toHalf(used + (spare * k) / sizes.length);
      used += sizes[k]!.width;
      placeLevel(pen, child, from, left + toHalf(used + (spare * (k + 1)) / sizes.length), y);
    });
    return;
  }
  const width = levelSize(tree).width - 2;
  const start = toHalf((left + right - width) / 2);
  draw(draft, tree.from, [left, y], [start, y]);
  draw(draft, tree.to, [start + width, y], [right, y]);
  let level = y;
  tree.children.forEach((child, k) => {
    draw(draft, tree.from, [start, y], [start, level]);
    draw(draft, tree.to, [start + width, y], [start + width, level]);
    placeLevel(pen, child, start, start + width, level);
    level -= sizes[k]!.rise + horizontalReach + rowGap;
  });
}
