import { useEffect, useRef } from 'react';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';

/**
 * Makes all that a held key does one undo step: call `hold` before each command of a key press, and `release` when the
 * key goes up, the focus leaves or the field closes. Several presses are several steps.
 */
export function useHeldKeys(): { hold(): void; release(): void } {
  const store = useWorkbenchStore();
  const held = useRef(false);
  const keys = useRef({
    hold: () => {
      if (held.current) return;
      held.current = true;
      store.getState().beginGesture();
    },
    release: () => {
      if (!held.current) return;
      held.current = false;
      store.getState().endGesture();
    },
  });
  useEffect(() => keys.current.release, []);
  return keys.current;
}
