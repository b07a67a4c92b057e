import type { Pen } from './draft.ts';
import { type Frame, isWay, lowestRun } from './frame.ts';
import { horizontalReach, rowGap, toHalf } from './metrics.ts';
import { levelSize } from './pieceSize.ts';
import { placeLevel } from './placePiece.ts';
import { leavesOf, reverse, type SpTree } from './spTree.ts';

/** A link's place in the free space over a lane, or below the last one: `lift` is its height over the floor there. */
export interface LinkSlot {
  readonly tree: SpTree;
  readonly left: number;
  readonly right: number;
  readonly channel: number;
  readonly lift: number;
}

const upperEdge = ({ tree, lift }: LinkSlot): number => lift + levelSize(tree).rise + rowGap;

/** Finds room for links between the ways: each near the middle of what it joins, over the lower one of its ways. */
export function slotLinks(
  frames: readonly Frame[],
  links: readonly SpTree[],
  laneCount: number,
  edges: { readonly left: number; readonly right: number },
): LinkSlot[] {
  const homes = homesOf(frames);
  const slots: LinkSlot[] = [];
  for (const tree of links) {
    const ends = [tree.from, tree.to].flatMap((node) => homes.get(node) ?? []);
    const { width } = levelSize(tree);
    const middle = ends.length === 0 ? width / 2 : ends.reduce((sum, { x }) => sum + x, 0) / ends.length;
    const left = toHalf(Math.max(edges.left, Math.min(middle - width / 2, edges.right - width)));
    const right = left + width;
    const channel = ends.length === 0 ? laneCount : Math.max(...ends.map(({ lane }) => lane));
    const below = slots.filter((slot) => slot.channel === channel && slot.left < right && left < slot.right);
    const isTurned = (homes.get(tree.from)?.x ?? 0) > (homes.get(tree.to)?.x ?? 0);
    const lift = Math.max(rowGap, ...below.map(upperEdge)) + horizontalReach;
    slots.push({ tree: isTurned ? reverse(tree) : tree, left, right, channel, lift });
  }
  return slots;
}

/** Height that the links in one channel need. */
export const channelHeight = (slots: readonly LinkSlot[], channel: number): number =>
  Math.max(0, ...slots.filter((slot) => slot.channel === channel).map(upperEdge));

/** Where each node can be met first. */
function homesOf(frames: readonly Frame[]): Map<string, { x: number; lane: number }> {
  const homes = new Map<string, { x: number; lane: number }>();
  const settle = (node: string, x: number, lane: number): void => {
    if (!homes.has(node)) homes.set(node, { x, lane });
  };
  for (const frame of [...frames].sort((a, b) => Number(isWay(b)) - Number(isWay(a)))) {
    const lane = lowestRun(frame)[1];
    const { row } = frame.stage;
    const inside = (tree: SpTree | null, x: number): void => {
      if (tree !== null) for (const leaf of leavesOf(tree)) settle(leaf.to, x, lane);
    };
    row.columns.forEach(({ node, leg }, k) => {
      settle(node, frame.xs[k]!, lane);
      inside(leg, frame.xs[k]!);
    });
    row.gaps.forEach(({ block, below }, k) => {
      const x = (frame.xs[k]! + frame.xs[k + 1]!) / 2;
      inside(block, x);
      inside(below, x);
    });
    for (const node of row.rails) settle(node, frame.xs[0]!, lane);
  }
  return homes;
}

/** Draws the links; `floorOf` says where a channel ends at its lower side. */
export function drawLinks(pen: Pen, slots: readonly LinkSlot[], floorOf: (channel: number) => number): void {
  for (const { tree, left, right, channel, lift } of slots) placeLevel(pen, tree, left, right, floorOf(channel) - lift);
}
