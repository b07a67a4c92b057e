import { useRef } from 'react';
import { alike } from '../../core/document/commands/withChanges.ts';
import type { Workbench } from '../../state/workbench.ts';
import { useWorkbench } from '../useWorkbench.ts';

/**
 * A value of the store that is made anew with every evaluation but seldom differs: the component renders again only when
 * `same` says that it does. Plain data by default.
 */
export function useAlike<T>(select: (workbench: Workbench) => T, same: (a: T, b: T) => boolean = alike): T {
  const last = useRef<{ readonly value: T } | null>(null);
  return useWorkbench((workbench) => {
    const value = select(workbench);
    if (last.current && same(last.current.value, value)) return last.current.value;
    last.current = { value };
    return value;
  });
}
