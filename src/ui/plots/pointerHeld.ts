let buttons = 0;
const listeners = new Set<() => void>();

const follow = (event: PointerEvent): void => {
  buttons = event.type === 'pointercancel' ? 0 : event.buttons;
  if (buttons === 0) for (const listener of listeners) listener();
};

if (typeof window !== 'undefined') {
  for (const type of ['pointerdown', 'pointerup', 'pointercancel'] as const) {
    window.addEventListener(type, follow, { capture: true, passive: true });
  }
}

/** Whether a button or finger is down anywhere on the page: axes keep still meanwhile. */
export const pointerHeld = (): boolean => buttons !== 0;

/** Calls back when the hand lets go. Returns what ends the watch. */
export function whenPointerLetsGo(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
