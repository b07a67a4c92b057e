import { useSyncExternalStore } from 'react';

const subscribe = (changed: () => void) => {
  window.addEventListener('resize', changed);
  return () => window.removeEventListener('resize', changed);
};

/** Height of the window, followed as it changes. */
export const useWindowHeight = (): number => useSyncExternalStore(subscribe, () => window.innerHeight);
