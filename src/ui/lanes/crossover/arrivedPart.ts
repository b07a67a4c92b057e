import type { Project } from '../../../core/document/schema.ts';

/** The part that the later document has and the earlier one has not; null where there is none. */
export function arrivedPart(before: Project, now: Project): string | null {
  const known = new Set(before.network.parts.map((part) => part.id));
  return now.network.parts.find((part) => !known.has(part.id))?.id ?? null;
}

/** Moves the focus to a part's value in the drawing, or to the part where it has none, once it is drawn. */
export function focusPart(id: string): void {
  requestAnimationFrame(() => {
    const drawn = document.querySelector(`[data-part="${CSS.escape(id)}"]`);
    const target = drawn?.querySelector('[role="spinbutton"]') ?? drawn?.querySelector('button');
    if (target instanceof HTMLElement) target.focus();
  });
}
