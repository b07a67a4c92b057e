import { temporal } from 'zundo';
import { createStore, type StateCreator, type StoreApi } from 'zustand/vanilla';
import { alike } from '../core/document/commands/withChanges.ts';
import type { Project } from '../core/document/schema.ts';
import type { Workbench } from './workbench.ts';

/** What a step back restores: the document, what the edit that led to it was called, and which opened document it is. */
type Remembered = Pick<Workbench, 'project' | 'undoLabel' | 'opening'>;

/** More than a day's work on one loudspeaker; steps share all that they did not change. */
export const MOST_STEPS = 500;

interface Mark extends Remembered {
  readonly redoLabel: string | null;
  readonly past: Partial<Remembered>[];
  readonly future: Partial<Remembered>[];
}

export interface History {
  /** The document of the gesture's mark while one is open, else null. */
  markedProject(): Project | null;
  /** To be called after every change of the document: in a gesture only the first one is a step. */
  afterEdit(): void;
  begin(): void;
  end(): void;
  cancel(): void;
  undo(): void;
  redo(): void;
  forget(): void;
}

/** Every write goes through `derive`, which adds what follows from a new document, so that nobody sees one without the other. */
export type Derive = (present: Workbench, changes: Partial<Workbench>) => Partial<Workbench>;

/**
 * The store with its undo history over the document alone. `derive` is asked before each write, undo and redo included.
 */
export function createStoreWithHistory(
  initial: (set: (changes: Partial<Workbench>) => void, get: () => Workbench, history: History) => Workbench,
  derive: Derive,
): StoreApi<Workbench> {
  return createStore<Workbench>()((set, get, api) => {
    const deriving: typeof set = (changes) => {
      const plain = typeof changes === 'function' ? changes(get()) : changes;
      set(derive(get(), plain));
    };
    const config: StateCreator<Workbench> = (tracked, tracedGet, tracedApi) => {
      const steps = (tracedApi as typeof tracedApi & { temporal: Steps }).temporal;
      return initial((changes) => tracked(changes), tracedGet, historyOver(steps, tracedGet, deriving));
    };
    const tracking = temporal<Workbench, [], [], Remembered>(config, {
      partialize: ({ project, undoLabel, opening }) => ({ project, undoLabel, opening }),
      equality: (a, b) => a.project === b.project,
      limit: MOST_STEPS,
    });
    return tracking(deriving, get, api as Parameters<typeof tracking>[2]);
  });
}

type Steps = StoreApi<{
  readonly pastStates: Partial<Remembered>[];
  readonly futureStates: Partial<Remembered>[];
  undo(): void;
  redo(): void;
  clear(): void;
  pause(): void;
  resume(): void;
}>;

/** `set` writes past the tracking. */
function historyOver(steps: Steps, get: () => Workbench, set: (changes: Partial<Workbench>) => void): History {
  let mark: Mark | null = null;

  /** Back to the mark, as if nothing had been done since. */
  const restore = ({ project, undoLabel, opening, redoLabel, past, future }: Mark) => {
    set({ project, undoLabel, opening, redoLabel });
    steps.setState({ pastStates: past, futureStates: future });
  };
  const close = (how: 'keep' | 'drop') => {
    if (mark === null) return;
    const opened = mark;
    mark = null;
    steps.getState().resume();
    const { project } = get();
    if (how === 'drop' || (project !== opened.project && alike(project, opened.project))) restore(opened);
  };
  const step = (by: 'undo' | 'redo') => {
    const before = get();
    steps.getState()[by]();
    const { pastStates, futureStates } = steps.getState();
    const redoLabel = futureStates.at(-1)?.undoLabel ?? null;
    const { opening, project } = get();
    const crossing = opening === before.opening ? null : { by, from: before.project.name, to: project.name };
    set({ redoLabel, crossing, ...(pastStates.length === 0 ? { undoLabel: null } : {}) });
  };

  return {
    markedProject: () => mark?.project ?? null,
    afterEdit() {
      if (mark !== null) steps.getState().pause();
    },
    begin() {
      close('keep');
      const { project, undoLabel, opening, redoLabel } = get();
      const { pastStates, futureStates } = steps.getState();
      mark = { project, undoLabel, opening, redoLabel, past: [...pastStates], future: [...futureStates] };
    },
    end: () => close('keep'),
    cancel: () => close('drop'),
    undo() {
      if (mark !== null) return close('drop');
      step('undo');
    },
    redo() {
      if (mark !== null) return close('drop');
      step('redo');
    },
    forget() {
      close('keep');
      steps.getState().clear();
      set({ undoLabel: null, redoLabel: null, crossing: null });
    },
  };
}
