import { beforeEach, describe, expect, it } from 'vitest';
import { writeProject } from '../../src/core/document/file/writeProject.ts';
import type { Project } from '../../src/core/document/schema.ts';
import { newProject } from '../../src/core/document/start/newProject.ts';
import { word } from '../../src/core/messages/word.ts';
import type { Clock } from '../../src/state/clock.ts';
import { createAutosave, SAVE_DELAY_MS } from '../../src/state/createAutosave.ts';
import { memoryStorage } from '../../src/state/memoryStorage.ts';
import type { ProjectStorage, WindowMemory } from '../../src/state/projectStorage.ts';
import type { StoredRecord } from '../../src/state/storedRecord.ts';
import { edited, expectWorded } from '../core/document/edits.ts';
import { twoWay } from '../core/document/twoWay.ts';
import { bench, driveTo } from './bench.ts';

/** Time that passes when a test says so. */
function handClock(): Clock & { pass(milliseconds: number): void } {
  let now = 0;
  let waiting: { readonly at: number; readonly run: () => void }[] = [];
  return {
    after(milliseconds, run) {
      const entry = { at: now + milliseconds, run };
      waiting.push(entry);
      return () => {
        waiting = waiting.filter((other) => other !== entry);
      };
    },
    pass(milliseconds) {
      now += milliseconds;
      const due = waiting.filter(({ at }) => at <= now);
      waiting = waiting.filter(({ at }) => at > now);
      for (const { run } of due) run();
    },
  };
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

let records: Map<string, StoredRecord>;
beforeEach(() => {
  records = new Map();
});

/** What one window remembers over a reload; a fresh one for a window that was not there before. */
function windowMemory(): WindowMemory {
  let key: string | null = null;
  return {
    load: () => key,
    save: (slotKey) => {
      key = slotKey;
    },
  };
}

/** A window: store, autosave and clock over the shared records. */
async function openWindow(
  wrap: (storage: ProjectStorage) => ProjectStorage = (storage) => storage,
  memory: WindowMemory = windowMemory(),
) {
  const storage = wrap(memoryStorage(records));
  const store = bench({ storage });
  const clock = handClock();
  const autosave = createAutosave(store, storage, memory, clock);
  expect(store.getState().storage).toBe('loading');
  await autosave.start();
  const codes = () => store.getState().refusal.map(({ code }) => code.replace('document.', ''));
  return { store, clock, autosave, codes, memory, state: () => store.getState() };
}
const texts = () => [...records.values()].map(({ text }) => text);
const driven = (driveV: number) => edited(twoWay, driveTo(driveV));

async function storeWork(project: Project): Promise<void> {
  await memoryStorage(records).create(project.name, writeProject(project));
}

describe('saving', () => {
  it('waits a moment, then stores the document, and the next page has it', async () => {
    const page = await openWindow();
    expect(page.state().storage).toBe('saved');
    page.state().dispatch(driveTo(4));
    expect(page.state().storage).toBe('saving');
    page.clock.pass(SAVE_DELAY_MS - 1);
    await settled();
    expect(texts()).toEqual([]);
    page.clock.pass(1);
    await settled();
    expect(page.state().storage).toBe('saved');
    expect(texts()).toEqual([writeProject(driven(4))]);
    const next = await openWindow();
    expect(next.state().project).toEqual(driven(4));
    expect(next.state()).toMatchObject({ undoLabel: null, refusal: [], storage: 'saved', keptAside: [] });
  });

  it('says saved only after the transaction has completed', async () => {
    let complete: () => void = () => undefined;
    const page = await openWindow((storage) => ({
      ...storage,
      async create(title, text) {
        const work = await storage.create(title, text);
        await new Promise<void>((resolve) => {
          complete = resolve;
        });
        return work;
      },
    }));
    page.state().dispatch(driveTo(4));
    page.clock.pass(SAVE_DELAY_MS);
    await settled();
    expect(page.state().storage).toBe('saving');
    complete();
    await settled();
    expect(page.state().storage).toBe('saved');
  });

  it('does not say saved while a later edit is still unsaved', async () => {
    const gates: (() => void)[] = [];
    const page = await openWindow((storage) => ({
      ...storage,
      async create(title, text) {
        await new Promise<void>((resolve) => gates.push(resolve));
        return storage.create(title, text);
      },
    }));
    page.state().dispatch(driveTo(4));
    page.clock.pass(SAVE_DELAY_MS);
    await settled();
    page.state().dispatch(driveTo(5));
    gates[0]!();
    await settled();
    expect(page.state().storage).toBe('saving');
    page.clock.pass(SAVE_DELAY_MS);
    await settled();
    expect(page.state().storage).toBe('saved');
    expect(texts()).toEqual([writeProject(driven(5))]);
  });

  it('gathers the steps of a drag', async () => {
    let writes = 0;
    const page = await openWindow((storage) => ({
      ...storage,
      create(title, text) {
        writes += 1;
        return storage.create(title, text);
      },
    }));
    page.state().beginGesture();
    for (let k = 0; k < 20; k++) {
      page.state().dispatch(driveTo(3 + k / 10));
      page.clock.pass(16);
    }
    page.state().endGesture();
    page.clock.pass(SAVE_DELAY_MS);
    await settled();
    expect(writes).toBe(1);
    expect(page.state().storage).toBe('saved');
  });

  it('stores at once when the page is left, and again and again', async () => {
    const page = await openWindow();
    for (const driveV of [4, 5, 6]) {
      page.state().dispatch(driveTo(driveV));
      await page.autosave.flush();
      expect(page.state().storage).toBe('saved');
      expect(texts()).toEqual([writeProject(driven(driveV))]);
    }
    expect([...records.values()][0]!.revision).toBe(3);
    await page.autosave.flush();
    expect([...records.values()][0]!.revision).toBe(3);
  });

  it('knows that an edit which was undone needs no saving, also while the edit is being written', async () => {
    const page = await openWindow();
    page.state().dispatch(driveTo(4));
    page.state().undo();
    expect(page.state().storage).toBe('saved');
    page.state().dispatch(driveTo(5));
    page.clock.pass(SAVE_DELAY_MS);
    page.state().undo();
    await settled();
    page.clock.pass(SAVE_DELAY_MS);
    await settled();
    expect(page.state().storage).toBe('saved');
    expect(texts()).toEqual([writeProject(twoWay)]);
  });

  it('says when it fails and tries again at the next edit', async () => {
    let full = true;
    const page = await openWindow((storage) => ({
      ...storage,
      create: (title, text) => (full ? Promise.reject(new Error('disk full')) : storage.create(title, text)),
    }));
    page.state().dispatch(driveTo(4));
    await page.autosave.flush();
    expect(page.state().storage).toBe('failed');
    expect(page.codes()).toEqual(['save-failed']);
    expect(word(page.state().refusal[0]!).sentence).toContain('disk full');
    page.state().dispatch(driveTo(5));
    await page.autosave.flush();
    expect(page.codes()).toEqual(['save-failed']);
    full = false;
    page.state().dispatch(driveTo(6));
    await page.autosave.flush();
    expect(page.state()).toMatchObject({ storage: 'saved', refusal: [] });
    expect(texts()).toEqual([writeProject(driven(6))]);
  });

  it('ends when it is stopped', async () => {
    const page = await openWindow();
    page.state().dispatch(driveTo(4));
    page.autosave.stop();
    page.clock.pass(SAVE_DELAY_MS);
    await settled();
    await page.autosave.flush();
    expect(texts()).toEqual([]);
  });
});

describe('starting', () => {
  it('keeps the first document and says so when storage cannot be used', async () => {
    const page = await openWindow((storage) => ({
      ...storage,
      load: () => Promise.reject(new Error('private window')),
    }));
    expect(page.state().project).toBe(twoWay);
    expect(page.state().storage).toBe('failed');
    expect(page.codes()).toEqual(['storage-unreadable']);
    for (const flaw of page.state().refusal) expectWorded(flaw);
  });

  it.each([
    ['damaged', '{"format":"conewright-project","version":1,"name":"cut o', 'stored-damaged', 'Two-way, unreadable'],
    [
      'damaged',
      writeProject(twoWay).replace('"widthM": 0.22', '"widthM": "wide"'),
      'stored-damaged',
      'Two-way, unreadable',
    ],
    ['newer', writeProject(twoWay).replace('"version": 2', '"version": 3'), 'stored-newer', 'Two-way, newer version'],
  ] as const)(
    'keeps %s work aside, untouched, and opens the demonstration with a sentence',
    async (kind, text, code, name) => {
      await memoryStorage(records).create('Two-way', text);
      const page = await openWindow();
      expect(page.state().project).toBe(twoWay);
      expect(page.codes()).toEqual([code]);
      expectWorded(page.state().refusal[0]!);
      expect(page.state().keptAside).toEqual([{ key: 'work-1', name, kind }]);
      expect(await page.state().keptAsideText('work-1')).toBe(text);
      page.state().dispatch(driveTo(4));
      await page.autosave.flush();
      expect(page.codes()).toEqual([code]);
      expect(texts()).toEqual([text, writeProject(driven(4))]);
      const next = await openWindow();
      expect(next.state().project).toEqual(driven(4));
      expect(next.state().keptAside).toEqual([{ key: 'work-1', name, kind }]);
      expect(next.state().refusal).toEqual([]);
    },
  );

  it('lets whoever has begun to work meanwhile go on, and keeps the stored work beside', async () => {
    await storeWork(newProject());
    const storage = memoryStorage(records);
    const store = bench({ storage });
    const autosave = createAutosave(store, storage, windowMemory(), handClock());
    const started = autosave.start();
    store.getState().dispatch(driveTo(4));
    await started;
    expect(store.getState().project).toEqual(driven(4));
    expect(store.getState().storage).toBe('saving');
    await autosave.flush();
    expect(texts()).toEqual([writeProject(newProject()), writeProject(driven(4))]);
    expect(store.getState().keptAside).toEqual([{ key: 'work-1', name: 'New loudspeaker', kind: 'copy' }]);
  });
});

describe('two windows', () => {
  it('never overwrite each other: the later one goes on in a copy and says so', async () => {
    await storeWork(twoWay);
    const [first, second] = [await openWindow(), await openWindow()];
    second.state().dispatch(driveTo(5));
    await second.autosave.flush();
    first.state().dispatch(driveTo(4));
    await first.autosave.flush();
    expect(texts()).toEqual([writeProject(driven(5)), writeProject(driven(4))]);
    expect(first.codes()).toEqual(['other-window']);
    expect(word(first.state().refusal[0]!).sentence).toContain('“Two-way, copy 2”');
    expect(first.state().storage).toBe('saved');
    expect(first.state().keptAside).toEqual([{ key: 'work-1', name: 'Two-way', kind: 'copy' }]);
    expect(second.state().refusal).toEqual([]);
  });

  it('then save side by side, and say nothing more', async () => {
    await storeWork(twoWay);
    const [first, second] = [await openWindow(), await openWindow()];
    for (const driveV of [4, 5, 6]) {
      first.state().dispatch(driveTo(driveV));
      await first.autosave.flush();
      second.state().dispatch(driveTo(driveV + 0.5));
      await second.autosave.flush();
    }
    expect(texts()).toEqual([writeProject(driven(6)), writeProject(driven(6.5))]);
    expect(first.state().refusal).toEqual([]);
    expect(second.codes()).toEqual(['other-window']);
    second.state().dismissRefusal();
    second.state().dispatch(driveTo(7));
    await second.autosave.flush();
    expect(second.state().refusal).toEqual([]);
    expect((await openWindow()).state().project).toEqual(driven(7));
  });

  it('can open each other work, as one step', async () => {
    await storeWork(twoWay);
    const [first, second] = [await openWindow(), await openWindow()];
    second.state().dispatch(driveTo(5));
    await second.autosave.flush();
    first.state().dispatch(driveTo(4));
    await first.autosave.flush();
    await first.state().openKeptAside('work-1');
    expect(first.state().project).toEqual(driven(5));
    first.state().undo();
    expect(first.state().project).toEqual(driven(4));
    await first.state().openKeptAside('work-99');
    expect(first.state().project).toEqual(driven(4));
    expect(await first.state().keptAsideText('work-99')).toBeNull();
  });
});

describe('a reloaded window', () => {
  const edit = async (page: Awaited<ReturnType<typeof openWindow>>, driveV: number) => {
    page.state().dispatch(driveTo(driveV));
    await page.autosave.flush();
  };

  it('goes on with its own work, though another window has written since', async () => {
    const first = await openWindow();
    const second = await openWindow();
    await edit(first, 4);
    await edit(second, 9);
    const again = await openWindow(undefined, first.memory);
    expect(again.state().project.chain.driveV).toBe(4);
    expect(again.state().keptAside).toHaveLength(1);
    await edit(again, 5);
    expect(again.codes()).toEqual([]);
    expect((await openWindow(undefined, second.memory)).state().project.chain.driveV).toBe(9);
  });

  it('goes on with its copy after it was overtaken', async () => {
    await storeWork(twoWay);
    const first = await openWindow();
    const second = await openWindow();
    await edit(first, 4);
    await edit(second, 9);
    expect(second.codes()).toContain('other-window');
    await edit(first, 6);
    expect((await openWindow(undefined, second.memory)).state().project.chain.driveV).toBe(9);
  });

  it('takes the work written last where it has none of its own, or its own is set aside', async () => {
    const first = await openWindow();
    await edit(first, 4);
    const second = await openWindow(undefined, windowMemory());
    expect(second.state().project.chain.driveV).toBe(4);
    const third = await openWindow();
    await edit(third, 7);
    await memoryStorage(records).keepAside(first.memory.load()!, 'damaged');
    await storeWork(driven(8));
    expect((await openWindow(undefined, first.memory)).state().project.chain.driveV).toBe(8);
  });
});
