import type { StoreApi } from 'zustand/vanilla';
import type { Command } from '../../core/document/command.ts';
import type { Problem } from '../../core/messages/problem.ts';
import type { Workbench } from '../../state/workbench.ts';

/** Dispatches for a control that says refusals beside itself: the page's own line then does not say them again. */
export function dispatchHere(store: StoreApi<Workbench>, command: Command): readonly Problem[] {
  const { dispatch, saidInPlace } = store.getState();
  const problems = dispatch(command);
  if (problems.length > 0) saidInPlace(problems);
  return problems;
}
