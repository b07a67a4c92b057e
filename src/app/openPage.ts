import type { StoreApi } from 'zustand';
import readingRoom from '../../demo-data/reading-room/reading-room.conewright.json';
import { type Evaluated, evaluateProject } from '../core/design/evaluateProject.ts';
import type { Check } from '../core/design/findings/index.ts';
import { writeProject } from '../core/document/file/writeProject.ts';
import type { Project } from '../core/document/schema.ts';
import { succeed } from '../core/messages/problem.ts';
import { drawSchematic } from '../core/schematic/drawSchematic.ts';
import {
  createAutosave,
  createWorkbench,
  indexedDbStorage,
  type Workbench,
  webSettingsStorage,
  webWindowMemory,
} from '../state/index.ts';
import type { PageServices } from '../ui/index.ts';
import { answerShown, keptName } from '../ui/index.ts';
import { acceptDroppedFiles } from './acceptDroppedFiles.ts';
import { chooseFile } from './chooseFile.ts';
import { cutSheetsInWorker } from './cutSheetsInWorker.ts';
import { installKeys } from './installKeys.ts';
import { markEdits } from './markEdits.ts';
import { projectFileName } from './projectFileName.ts';
import { saveTextFile } from './saveTextFile.ts';
import { startingPoints } from './startingPoints.ts';
import { watchForUpdates } from './watchForUpdates.ts';

/** Stored work is waited for so long before the demonstration is shown in its place: it should not flash up first. */
const WAIT_FOR_STORAGE_MS = 400;

/** Puts the page together: store, storage, files, keys, updates. Settles when there is something to show. */
export async function openPage(): Promise<{ store: StoreApi<Workbench>; services: PageServices }> {
  const storage = indexedDbStorage();
  let more: readonly Check[] = [];
  const store = createWorkbench<Evaluated>({
    // A demonstration of our own, held by a test to the document's schema.
    project: readingRoom as unknown as Project,
    evaluate: (project, previous) => evaluateProject(project, previous, more),
    drawSchematic: (parts, ways, previous) => succeed(drawSchematic(parts, ways, previous ?? undefined)),
    storage,
    settingsStorage: webSettingsStorage(localStorage),
    readColumns: async (text, fileName) =>
      (await import('../core/measured/readColumns.ts')).readColumns(text, fileName),
    report: (fault) => console.error(fault),
  });
  void answerShown.then(async () => {
    more = (await import('../core/design/findings/later.ts')).laterChecks;
    store.getState().evaluateAgain();
  });
  const autosave = createAutosave(store, storage, webWindowMemory(sessionStorage));
  const started = autosave.start();
  window.addEventListener('pagehide', () => void autosave.flush());
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void autosave.flush();
  });

  const openText: Workbench['openText'] = (text, fileName) => store.getState().openText(text, fileName);
  const services: PageServices = {
    startingPoints,
    saveFile: () => {
      const { project } = store.getState();
      saveTextFile(writeProject(project), projectFileName(project.name));
    },
    saveText: (text, projectName) => saveTextFile(text, projectFileName(projectName)),
    chooseFile: () => chooseFile(openText),
    cutSheets: cutSheetsInWorker,
    update: watchForUpdates(),
  };
  acceptDroppedFiles(openText);
  markEdits(store);
  installKeys(store, services, showKeys, () => {
    const { undoLabel, project, dispatch } = store.getState();
    const names = project.snapshots.map((state) => state.name);
    dispatch({ type: 'keep-state', name: keptName(undoLabel, names) });
  });
  await Promise.race([started, new Promise((resolve) => setTimeout(resolve, WAIT_FOR_STORAGE_MS))]);
  return { store, services };
}

/** Presses the button that opens the list of keys, wherever one is in sight. */
function showKeys(): void {
  const buttons = [...document.querySelectorAll<HTMLElement>('[data-keys]')];
  (buttons.find((button) => button.checkVisibility()) ?? buttons[0])?.click();
}
