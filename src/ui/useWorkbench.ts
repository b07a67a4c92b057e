import { useStore } from 'zustand';
import type { Workbench } from '../state/workbench.ts';
import { useWorkbenchStore } from './useWorkbenchStore.ts';

/**
 * One value of the store; the component renders again when it changes. Select plain values or things that the store
 * keeps identical; a selector that builds a new object would render without end.
 * Example: `const name = useWorkbench((s) => s.project.name);`
 */
export function useWorkbench<T>(select: (workbench: Workbench) => T): T {
  return useStore(useWorkbenchStore(), select);
}
