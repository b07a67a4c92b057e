import type { StepKeys } from './stepQuantity.ts';

/** What a key press asks of a value: arrows step, Shift or the page keys by ten times, Alt by a tenth; null for other keys. */
export function stepKeysOf(event: {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}): StepKeys | null {
  if (event.ctrlKey || event.metaKey) return null;
  const direction = UP_OR_DOWN.get(event.key);
  if (direction === undefined) return null;
  const paged = event.key.startsWith('Page');
  return { direction, coarse: event.shiftKey || paged, fine: event.altKey && !event.shiftKey && !paged };
}

const UP_OR_DOWN = new Map<string, 1 | -1>([
  ['ArrowUp', 1],
  ['PageUp', 1],
  ['ArrowDown', -1],
  ['PageDown', -1],
]);
