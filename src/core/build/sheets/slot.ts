/** A rectangle that guillotine cuts made, and what became of it. Sizes are on the saw's grid, kerf included. */
export interface Slot {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  content: SlotContent;
}
export type SlotContent =
  | { readonly kind: 'empty' }
  | { readonly kind: 'piece'; readonly piece: number; readonly turned: boolean }
  | { readonly kind: 'cut'; readonly axis: 'x' | 'y'; readonly first: Slot; readonly second: Slot };

/** A sheet in use: which kind, the tree of its cuts, and its rectangles that are still free. */
export interface OpenSheet {
  readonly field: number;
  readonly root: Slot;
  readonly free: Slot[];
}

export const emptySlot = (x: number, y: number, w: number, h: number): Slot => ({
  x,
  y,
  w,
  h,
  content: { kind: 'empty' },
});

export const openSheet = (field: number, size: { readonly w: number; readonly h: number }): OpenSheet => {
  const root = emptySlot(0, 0, size.w, size.h);
  return { field, root, free: [root] };
};

/** Cuts a slot in two at `at` from its near edge; no cut where nothing lies beyond. Gives the near part, then the far part. */
export function cutSlot(slot: Slot, axis: 'x' | 'y', at: number): readonly [Slot, Slot | null] {
  const whole = axis === 'x' ? slot.w : slot.h;
  if (at === whole) return [slot, null];
  const first = axis === 'x' ? emptySlot(slot.x, slot.y, at, slot.h) : emptySlot(slot.x, slot.y, slot.w, at);
  const second =
    axis === 'x'
      ? emptySlot(slot.x + at, slot.y, slot.w - at, slot.h)
      : emptySlot(slot.x, slot.y + at, slot.w, slot.h - at);
  slot.content = { kind: 'cut', axis, first, second };
  return [first, second];
}

/** Every rectangle at the ends of the tree, pieces and free ones. */
export function* endsOf(slot: Slot): Generator<Slot> {
  if (slot.content.kind !== 'cut') {
    yield slot;
    return;
  }
  yield* endsOf(slot.content.first);
  yield* endsOf(slot.content.second);
}

/** How often the direction of the saw changes from the board to the last piece. */
export function stagesOf(slot: Slot, axis: 'x' | 'y' | null = null): number {
  const { content } = slot;
  if (content.kind !== 'cut') return 0;
  const inner = Math.max(stagesOf(content.first, content.axis), stagesOf(content.second, content.axis));
  return inner + (content.axis === axis ? 0 : 1);
}
