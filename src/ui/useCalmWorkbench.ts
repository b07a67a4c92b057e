import { useEffect, useRef, useState } from 'react';
import type { Workbench } from '../state/workbench.ts';
import { useWorkbenchStore } from './useWorkbenchStore.ts';

/** Numbers that change more often than this cannot be read anyway. */
const CALM_MS = 100;

/**
 * Values of the store for what is read rather than followed: the first change shows at once, further ones at most ten times
 * a second, the last one always. So a drag spends its frames on the curves. `select` returns an object of values that the
 * store keeps identical; it is compared value by value.
 */
export function useCalmWorkbench<T extends object>(select: (workbench: Workbench) => T): T {
  const store = useWorkbenchStore();
  const selecting = useRef(select);
  selecting.current = select;
  const [value, setValue] = useState(() => select(store.getState()));
  useEffect(() => {
    let timer = 0;
    let takenAt = Number.NEGATIVE_INFINITY;
    let present: T | null = null;
    const take = (): void => {
      timer = 0;
      const next = selecting.current(store.getState());
      if (present !== null && alike(present, next)) return;
      takenAt = performance.now();
      present = next;
      setValue(next);
    };
    take();
    const unsubscribe = store.subscribe(() => {
      if (timer !== 0) return;
      const wait = CALM_MS - (performance.now() - takenAt);
      if (wait <= 0) take();
      else timer = window.setTimeout(take, wait);
    });
    return () => {
      unsubscribe();
      window.clearTimeout(timer);
    };
  }, [store]);
  return value;
}

const alike = <T extends object>(before: T, after: T): boolean =>
  (Object.keys(after) as (keyof T)[]).every((key) => Object.is(before[key], after[key]));
