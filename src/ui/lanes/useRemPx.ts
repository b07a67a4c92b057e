import { useSyncExternalStore } from 'react';
import { useWorkbench } from '../useWorkbench.ts';

const rem = () => Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
const subscribe = (changed: () => void) => {
  window.addEventListener('resize', changed);
  return () => window.removeEventListener('resize', changed);
};

/** Pixels of one rem: what text, and so every drawing beside text, is sized by. Follows the large-type setting. */
export function useRemPx(): number {
  useWorkbench((s) => s.settings.largeType);
  return useSyncExternalStore(subscribe, rem);
}
