import type { Box } from '../cabinetDrawing.ts';

/** A text that looks for a place: the first of its boxes that lies over nothing is taken. */
export interface LabelWish<T> {
  readonly key: string;
  readonly options: readonly (T & { readonly box: Box })[];
  /** Stands at its first option even where nothing is free: it cannot be done without. */
  readonly must?: boolean;
}

const overlap = (a: Box, b: Box): boolean =>
  a.leftPx < b.leftPx + b.widthPx &&
  b.leftPx < a.leftPx + a.widthPx &&
  a.topPx < b.topPx + b.heightPx &&
  b.topPx < a.topPx + a.heightPx;

/**
 * Finds places for labels in the order of their weight, so that no text lies over another; what finds none is left out. `soft`: what
 * they lie on only where there is nothing else.
 */
export function placeLabels<T>(
  wishes: readonly LabelWish<T>[],
  taken: readonly Box[],
  soft: readonly Box[] = [],
): ReadonlyMap<string, T & { readonly box: Box }> {
  const used = [...taken];
  const placed = new Map<string, T & { readonly box: Box }>();
  for (const { key, options, must } of wishes) {
    const clearOf = (boxes: readonly Box[]) => options.find(({ box }) => !boxes.some((other) => overlap(box, other)));
    const free = clearOf([...used, ...soft]) ?? clearOf(used) ?? (must ? options[0] : undefined);
    if (!free) continue;
    used.push(free.box);
    placed.set(key, free);
  }
  return placed;
}

/** A box of this size about a middle. */
export const boxAbout = (xPx: number, yPx: number, widthPx: number, heightPx: number): Box => ({
  leftPx: xPx - widthPx / 2,
  topPx: yPx - heightPx / 2,
  widthPx,
  heightPx,
});
