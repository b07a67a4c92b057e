import type { StoreApi } from 'zustand/vanilla';
import type { Evaluation } from '../core/design/evaluation.ts';
import { applyCommand } from '../core/document/applyCommand.ts';
import type { Command } from '../core/document/command.ts';
import { describeCommand } from '../core/document/describe/describeCommand.ts';
import { readProject } from '../core/document/file/readProject.ts';
import type { Project } from '../core/document/schema.ts';
import type { ReadCurves } from '../core/measured/readColumns.ts';
import { type Problem, problem, type Result } from '../core/messages/problem.ts';
import type { SchematicPlan } from '../core/schematic/plan.ts';
import { answered, faultProblem, type MaybeLater } from './answered.ts';
import { curveCommands } from './curveCommands.ts';
import { ghostKeeper } from './ghostKeeper.ts';
import { createStoreWithHistory, type Derive } from './history.ts';
import { afterRefusal, afterSuccess } from './lastingRefusals.ts';
import type { ProjectStorage } from './projectStorage.ts';
import { type DrawSchematic, schematicKeeper } from './schematicKeeper.ts';
import { selectionIn } from './selectionIn.ts';
import { readSettings, type SettingsStorage } from './settings.ts';
import type { PendingCurve, Workbench } from './workbench.ts';

export interface WorkbenchParts<E extends Evaluation> {
  /** The document that is shown until stored work is there. */
  readonly project: Project;
  /** At once or later; an answer for a document that is no longer the present one is dropped. */
  readonly evaluate: (project: Project, previous: E | undefined) => MaybeLater<Result<E>>;
  readonly drawSchematic: DrawSchematic;
  /** For other stored work; saving is `createAutosave`. */
  readonly storage: Pick<ProjectStorage, 'read'>;
  readonly settingsStorage?: SettingsStorage;
  /** At once or later. */
  readonly readColumns?: (text: string, fileName: string) => MaybeLater<Result<ReadCurves>>;
  /** Where faults of the program go that were turned into problems. */
  readonly report?: (fault: unknown) => void;
}

/**
 * The store of the page: document, history, selection and results. It knows neither React nor the DOM.
 * @example const store = createWorkbench({ project: newProject(), evaluate: evaluateProject, drawSchematic, storage })
 */
export function createWorkbench<E extends Evaluation>(parts: WorkbenchParts<E>): StoreApi<Workbench> {
  const { settingsStorage } = parts;
  const report = parts.report ?? (() => undefined);
  let lastGood: E | undefined;
  let store: StoreApi<Workbench> | null = null;
  let openings = 0;

  const ask = (project: Project, previous: E | undefined) =>
    answered('document.not-evaluated', report, () => parts.evaluate(project, previous));
  const drawn = schematicKeeper((...circuit) => {
    const plan = answered<SchematicPlan>('document.not-drawn', report, () => parts.drawSchematic(...circuit));
    if (plan instanceof Promise) throw new Error('A circuit is drawn at once.');
    return plan;
  });
  const ghosts = ghostKeeper(
    (project) => ask(project, undefined),
    () => store?.setState((now) => ({ ghosts: ghosts(now.project) })),
  );

  function picture(project: Project): Partial<Workbench> {
    const { schematic, problems: drawingProblems } = drawn(project);
    const good = (result: Result<E>): Pick<Workbench, 'problems'> & Partial<Pick<Workbench, 'evaluation'>> => {
      if (!result.ok) return { problems: [...result.problems, ...drawingProblems] };
      lastGood = result.value;
      return { evaluation: result.value, problems: drawingProblems };
    };
    const answer = ask(project, lastGood);
    if (answer instanceof Promise) {
      void answer.then((result) => {
        if (store?.getState().project === project) store.setState(good(result));
      });
    }
    return {
      schematic,
      ghosts: ghosts(project),
      ...(answer instanceof Promise ? { problems: drawingProblems } : good(answer)),
    };
  }

  const derive: Derive = (present, changes) => {
    const { project } = changes;
    if (project === undefined || project === present.project) return changes;
    const selection = changes.selection === undefined ? present.selection : changes.selection;
    const lifted = present.lifted !== null && project.network.parts.some((part) => part.id === present.lifted);
    return {
      ...changes,
      ...picture(project),
      selection: selectionIn(selection, present.project, project),
      lifted: lifted ? present.lifted : null,
    };
  };

  function storedSettings(): unknown {
    try {
      return settingsStorage?.load();
    } catch (fault) {
      report(fault);
      return undefined;
    }
  }

  store = createStoreWithHistory((set, get, history) => {
    const refuse = (problems: readonly Problem[]) => {
      set({ refusal: afterRefusal(get().refusal, problems) });
      return problems;
    };
    const succeed = () => {
      const { refusal } = get();
      const remaining = afterSuccess(refusal);
      if (remaining !== refusal) set({ refusal: remaining });
    };
    const edit = (changes: Partial<Workbench> & Pick<Workbench, 'project' | 'undoLabel'>) => {
      set({ redoLabel: null, crossing: null, refusal: afterSuccess(get().refusal), ...changes });
      history.afterEdit();
    };

    const dispatch = (command: Command): readonly Problem[] => {
      const { project } = get();
      const result = applyCommand(project, command);
      if (!result.ok) return refuse(result.problems);
      if (result.value === project) {
        succeed();
        return [];
      }
      const label = describeCommand(command, history.markedProject() ?? project);
      edit({ project: result.value, undoLabel: label });
      return [];
    };
    const open = (project: Project) => {
      history.end();
      if (project === get().project) return;
      openings += 1;
      const undoLabel = `opening of “${project.name}”`;
      edit({ project, undoLabel, opening: openings, selection: null, pendingCurve: null });
    };
    const openText = (text: string, fileName: string) => {
      const start = text.replace(/^\uFEFF/, '').trimStart();
      if (start === '' || start.startsWith('{') || !parts.readColumns) {
        const read = readProject(text);
        if (read.ok) open(read.value);
        else refuse(read.problems);
        return;
      }
      const take = (read: Result<ReadCurves>): void => {
        if (!read.ok) refuse(read.problems);
        else
          set({ pendingCurve: joined(get().pendingCurve, read.value, fileName), refusal: afterSuccess(get().refusal) });
      };
      const read = parts.readColumns(text, fileName);
      if (read instanceof Promise) void read.then(take, (fault) => refuse([faultProblem('document.not-read', fault)]));
      else take(read);
    };

    return {
      project: parts.project,
      evaluation: null,
      schematic: null,
      ghosts: [],
      problems: [],
      refusal: [],
      selection: null,
      lifted: null,
      cursorHz: null,
      storage: 'loading',
      keptAside: [],
      pendingCurve: null,
      settings: readSettings(storedSettings()),
      undoLabel: null,
      redoLabel: null,
      opening: openings,
      crossing: null,
      ...picture(parts.project),

      dispatch,
      beginGesture: history.begin,
      endGesture: history.end,
      cancelGesture: history.cancel,
      undo() {
        history.undo();
        succeed();
      },
      redo() {
        history.redo();
        succeed();
      },
      select: (selection) => set({ selection }),
      lift: (lifted) => set({ lifted }),
      setCursor: (cursorHz) => set({ cursorHz }),
      setSettings(changes) {
        const settings = { ...get().settings, ...changes };
        set({ settings });
        try {
          settingsStorage?.save(settings);
        } catch (fault) {
          report(fault);
        }
      },
      open,
      openText,
      dismissRefusal: () => set({ refusal: [] }),
      saidInPlace(problems) {
        const { refusal } = get();
        const unsaid = refusal.filter((one) => !problems.includes(one));
        if (unsaid.length < refusal.length) set({ refusal: unsaid });
      },
      evaluateAgain: () => set(picture(get().project)),
      dismissCrossing: () => set({ crossing: null }),
      restore(project) {
        history.end();
        openings += 1;
        set({ project, opening: openings });
        history.forget();
      },
      acceptCurve(choice) {
        const { pendingCurve, project } = get();
        if (pendingCurve === null) return refuse([problem('document.no-curve-waiting', { kind: 'document' })]);
        const commands = curveCommands(project, pendingCurve, choice);
        const problems = commands.length === 0 ? [] : dispatch({ type: 'together', commands });
        if (problems.length === 0) set({ pendingCurve: null });
        return problems;
      },
      dismissCurve: () => set({ pendingCurve: null }),
      async openKeptAside(key) {
        const text = await keptText(key);
        if (text !== null) openText(text, key);
      },
      keptAsideText: (key) => keptText(key),
    };

    async function keptText(key: string): Promise<string | null> {
      try {
        return await parts.storage.read(key);
      } catch (fault) {
        refuse([faultProblem('document.storage-unreadable', fault)]);
        return null;
      }
    }
  }, derive);
  return store;
}

function joined(waiting: PendingCurve | null, { notes, ...curve }: ReadCurves, fileName: string): PendingCurve {
  const name = fileName.replace(/\.[^.]{1,8}$/, '') || fileName;
  return {
    curves: [...(waiting?.curves ?? []), { ...curve, name: name === '' ? 'curve' : name }],
    notes: [...(waiting?.notes ?? []), ...notes],
    fileName,
  };
}
