import type { StoreApi } from 'zustand/vanilla';
import { readProject } from '../core/document/file/readProject.ts';
import { writeProject } from '../core/document/file/writeProject.ts';
import type { Project } from '../core/document/schema.ts';
import { type Problem, problem } from '../core/messages/problem.ts';
import { faultProblem } from './answered.ts';
import { type Clock, systemClock } from './clock.ts';
import { afterRefusal } from './lastingRefusals.ts';
import type { ProjectStorage, StoredSlot, StoredWork, WindowMemory } from './projectStorage.ts';
import type { Workbench } from './workbench.ts';

/** Long enough to gather the steps of a drag, short enough that hardly anything is ever unsaved. */
export const SAVE_DELAY_MS = 150;

export interface Autosave {
  /** Takes up this window's own work, or else what was stored last, then saves every edit. Settles when stored work is there or known to be absent. */
  start(): Promise<void>;
  /** Saves at once what is unsaved: for the moment at which a page is hidden or left. Settles when storage has answered. */
  flush(): Promise<void>;
  stop(): void;
}

/**
 * Keeps the store's document in storage. The state says `saved` only when the transaction of the present document has
 * completed. Work of another window is never overwritten: then this one goes on in a slot of its own and says so.
 * A reloaded window goes on with its own slot, which `memory` knows. Stored work that cannot be read is kept aside, and the document that the store began with stays.
 */
export function createAutosave(
  store: StoreApi<Workbench>,
  storage: ProjectStorage,
  memory: WindowMemory,
  clock: Clock = systemClock,
): Autosave {
  let slot: StoredSlot | null = null;
  let stored: Project = store.getState().project;
  let callOff: (() => void) | null = null;
  let running: Promise<void> | null = null;
  let unsubscribe: (() => void) | null = null;

  const say = (...problems: Problem[]) =>
    store.setState((now) => ({ refusal: afterRefusal(unsaid(now.refusal, 'document.save-failed'), problems) }));
  const unsaid = (refusal: readonly Problem[], code: string) => refusal.filter((entry) => entry.code !== code);
  const listOthers = async () => store.setState({ keptAside: await storage.others(slot?.key ?? null) });
  const unsaved = () => store.getState().project !== stored;

  const take = (present: StoredSlot) => {
    slot = present;
    memory.save(present.key);
  };

  async function write(project: Project): Promise<void> {
    const text = writeProject(project);
    if (slot !== null) {
      const outcome = await storage.save(slot, project.name, text);
      if (outcome.kind === 'saved') {
        take(outcome.slot);
        return;
      }
    }
    const overtaken = slot !== null;
    const created = await storage.create(project.name, text);
    take(created);
    if (overtaken) say(problem('document.other-window', { kind: 'document' }, { copy: created.name }));
    // The work is safe whether or not the list of the others comes in.
    await listOthers().catch(() => undefined);
  }

  async function saveNow(): Promise<void> {
    const { project } = store.getState();
    try {
      await write(project);
      stored = project;
      const { refusal } = store.getState();
      if (refusal.some(({ code }) => code === 'document.save-failed')) {
        store.setState({ refusal: unsaid(refusal, 'document.save-failed') });
      }
      if (!unsaved()) store.setState({ storage: 'saved' });
      else if (callOff === null) schedule();
    } catch (fault) {
      store.setState({ storage: 'failed' });
      say(faultProblem('document.save-failed', fault));
    }
  }

  /** One write at a time; edits that come meanwhile have their own delay running. */
  function flush(): Promise<void> {
    callOff?.();
    callOff = null;
    if (running !== null)
      return running.then(() => (unsaved() && store.getState().storage !== 'failed' ? flush() : undefined));
    if (unsubscribe === null || !unsaved()) return Promise.resolve();
    running = saveNow().finally(() => {
      running = null;
    });
    return running;
  }

  function schedule(): void {
    if (!unsaved()) {
      // Undone before it was stored: nothing is left to write, unless a write of the undone state is under way.
      if (running === null && store.getState().storage === 'saving') store.setState({ storage: 'saved' });
      return;
    }
    if (store.getState().storage !== 'saving') store.setState({ storage: 'saving' });
    callOff?.();
    callOff = clock.after(SAVE_DELAY_MS, () => {
      callOff = null;
      void flush();
    });
  }

  async function takeUp(work: StoredWork): Promise<void> {
    const read = readProject(work.text);
    if (read.ok) {
      take(work);
      stored = read.value;
      store.getState().restore(read.value);
      return;
    }
    const newer = read.problems.some(({ code }) => code === 'document.newer-version');
    const copy = await storage.keepAside(work.key, newer ? 'newer' : 'damaged');
    const code = newer ? 'document.stored-newer' : 'document.stored-damaged';
    say(problem(code, { kind: 'document' }, { copy }));
  }

  async function start(): Promise<void> {
    store.setState({ storage: 'loading' });
    let readable = true;
    try {
      const work = await storage.load(memory.load());
      // Whoever has begun to work meanwhile goes on in a slot of their own; the stored work is among the others.
      if (work !== null && !unsaved()) await takeUp(work);
      await listOthers();
    } catch (fault) {
      readable = false;
      say(faultProblem('document.storage-unreadable', fault));
    }
    unsubscribe = store.subscribe((now, before) => {
      if (now.project !== before.project) schedule();
    });
    store.setState({ storage: readable ? 'saved' : 'failed' });
    if (unsaved()) schedule();
  }

  return {
    start,
    flush,
    stop() {
      callOff?.();
      callOff = null;
      unsubscribe?.();
      unsubscribe = null;
    },
  };
}
