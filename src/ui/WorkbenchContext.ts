import { createContext } from 'react';
import type { StoreApi } from 'zustand';
import type { Workbench } from '../state/workbench.ts';

/** The one store of the page. `src/app` provides it; tests provide their own. */
export const WorkbenchContext = createContext<StoreApi<Workbench> | null>(null);
