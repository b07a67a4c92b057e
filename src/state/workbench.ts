import type { Evaluation } from '../core/design/evaluation.ts';
import type { Command } from '../core/document/command.ts';
import type { Project } from '../core/document/schema.ts';
import type { Problem } from '../core/messages/problem.ts';
import type { SchematicPlan } from '../core/schematic/plan.ts';

/** What is picked: one thing of the document at a time. */
export type Selection = {
  readonly kind: 'part' | 'speaker' | 'port' | 'chamber' | 'driver' | 'curve';
  readonly id: string;
} | null;

export interface Settings {
  readonly theme: 'auto' | 'light' | 'dark';
  readonly largeType: boolean;
  readonly units: 'metric' | 'imperial';
  /** Preferred-value series that the arrow keys step along. */
  readonly series: 'E6' | 'E12' | 'E24' | 'E48' | 'E96';
}

/** A kept state, evaluated, for the ghost curves. */
export interface Ghost {
  readonly id: string;
  readonly name: string;
  readonly evaluation: Evaluation | null;
}

export interface WorkbenchState {
  /** The document. Only this is saved and undone. */
  readonly project: Project;
  /** The last good picture; of the present document when `problems` is empty. null only before the first one. */
  readonly evaluation: Evaluation | null;
  readonly schematic: SchematicPlan | null;
  readonly ghosts: readonly Ghost[];
  /** Why the present document cannot be solved or drawn; empty when it can. */
  readonly problems: readonly Problem[];
  /** What the last refused command or file said; cleared by the next success. */
  readonly refusal: readonly Problem[];
  readonly selection: Selection;
  /** Speaker part whose curve is lifted because the pointer or focus is in its lane. */
  readonly lifted: string | null;
  /** Frequency under the pointer in any plot. */
  readonly cursorHz: number | null;
  readonly storage: 'loading' | 'saving' | 'saved' | 'failed';
  readonly settings: Settings;
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;
}

export interface WorkbenchActions {
  /** Applies, evaluates, schedules the save. Returns the problems when refused. */
  dispatch(command: Command): readonly Problem[];
  /** Commands until `endGesture` are one undo step; `cancelGesture` goes back to the mark. */
  beginGesture(): void;
  endGesture(): void;
  cancelGesture(): void;
  undo(): void;
  redo(): void;
  select(selection: Selection): void;
  lift(speakerId: string | null): void;
  setCursor(hz: number | null): void;
  setSettings(changes: Partial<Settings>): void;
  /** Replaces the document (opened file, demo, new project) as one undo step. */
  open(project: Project): void;
  /** Reads file text: a project or measured columns are told apart by content; refusals land in `refusal`. */
  openText(text: string, fileName: string): void;
  dismissRefusal(): void;
}

export type Workbench = WorkbenchState & WorkbenchActions;
