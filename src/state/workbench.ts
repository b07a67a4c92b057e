import type { Evaluation } from '../core/design/evaluation.ts';
import type { Command } from '../core/document/command.ts';
import type { Curve, Project } from '../core/document/schema.ts';
import type { ReadCurves } from '../core/measured/readColumns.ts';
import type { Finding, Problem } from '../core/messages/problem.ts';
import type { SchematicPlan } from '../core/schematic/plan.ts';

/** What is picked: one thing of the document at a time. */
export type Selection = {
  readonly kind: 'part' | 'speaker' | 'port' | 'radiator' | 'duct' | 'chamber' | 'driver' | 'curve';
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

/** A curve as it was read from columns of text, before anybody said what it belongs to. */
export interface ReadCurve extends Omit<ReadCurves, 'notes'> {
  /** The file's name without its extension. */
  readonly name: string;
}

/** Measured columns that wait for the person to say what they are; further files join those that wait. */
export interface PendingCurve {
  readonly curves: readonly ReadCurve[];
  /** What was ignored, guessed or mended while reading. */
  readonly notes: readonly Finding[];
  /** Of the file that was read last. */
  readonly fileName: string;
}

/** The person's answer for the waiting curves. */
export interface CurveChoice {
  readonly belongsTo: Curve['belongsTo'];
  readonly taken: Curve['taken'];
  /** For each waiting curve what it is; null leaves it out. */
  readonly quantities: readonly (Curve['quantity'] | null)[];
  /** A driver's curve rules above this frequency; null keeps it beside the model without using it. */
  readonly blendHz: number | null;
}

/** Other work in this browser's storage: a copy from another window, or what could not be read. Never deleted by itself. */
export interface KeptAside {
  readonly key: string;
  readonly name: string;
  readonly kind: 'copy' | 'damaged' | 'newer';
}

/** A step through the history that left the document that was on the screen for another one. */
export interface Crossing {
  readonly by: 'undo' | 'redo';
  /** Names of the documents. */
  readonly from: string;
  readonly to: string;
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
  /**
   * What the last refused command or file said; cleared by the next success. What storage has to say stays until it is
   * dismissed or over.
   */
  readonly refusal: readonly Problem[];
  readonly selection: Selection;
  /** Speaker part whose curve is lifted because the pointer or focus is in its lane. */
  readonly lifted: string | null;
  /** Frequency under the pointer in any plot. */
  readonly cursorHz: number | null;
  /** `saved` only when the storage transaction of the present document has completed. */
  readonly storage: 'loading' | 'saving' | 'saved' | 'failed';
  readonly keptAside: readonly KeptAside[];
  readonly pendingCurve: PendingCurve | null;
  readonly settings: Settings;
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;
  /** Tells one opened document from another: the same through all edits of one, and again after undo brings it back. */
  readonly opening: number;
  /** Set where undo or redo went from one opened document to another, until the next edit or until it is dismissed. */
  readonly crossing: Crossing | null;
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
  /** For who says a refusal beside what was refused: takes these problems out of `refusal`, so that they are said once. */
  saidInPlace(problems: readonly Problem[]): void;
  dismissCrossing(): void;
  /** Evaluates the present document once more: for when the evaluation itself has learnt something. */
  evaluateAgain(): void;
  /** Replaces the document and forgets the history: for when the page opens. */
  restore(project: Project): void;
  /** Takes the waiting curves into the document as one undo step. Returns the problems when refused; they keep waiting. */
  acceptCurve(choice: CurveChoice): readonly Problem[];
  dismissCurve(): void;
  /** Opens other stored work in place of the present document, as one undo step. */
  openKeptAside(key: string): Promise<void>;
  /** Its text as stored, for saving it as a file; null when it is gone. */
  keptAsideText(key: string): Promise<string | null>;
}

export type Workbench = WorkbenchState & WorkbenchActions;
