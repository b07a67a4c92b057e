import { useContext } from 'react';
import type { StoreApi } from 'zustand';
import type { Workbench } from '../state/workbench.ts';
import { WorkbenchContext } from './WorkbenchContext.ts';

/** The store itself, for components that subscribe without React or that only act. */
export function useWorkbenchStore(): StoreApi<Workbench> {
  const store = useContext(WorkbenchContext);
  if (!store) throw new Error('A component of the workbench stands outside its WorkbenchContext.');
  return store;
}
