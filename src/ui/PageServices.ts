import { createContext } from 'react';
import type { Project } from '../core/document/schema.ts';
import type { CutSheets } from '../state/cutSheets.ts';

/** A project to begin with: an empty one, or one of the demonstrations. */
export interface StartingPoint {
  readonly id: string;
  readonly title: string;
  /** One sentence: what it is. */
  readonly about: string;
  load(): Promise<Project>;
}

/** What the page can do beyond the store: the composition root provides it. */
export interface PageServices {
  readonly startingPoints: readonly StartingPoint[];
  /** Writes the document as a file NAME.conewright.json. */
  saveFile(): void;
  /** Writes any text as a file named after a project. */
  saveText(text: string, projectName: string): void;
  /** Lets the person choose a file and opens it. */
  chooseFile(): void;
  /** Lays the cabinet's panels out on boards, away from the page's own thread. */
  readonly cutSheets: CutSheets;
  /** A newer version of the page is ready; `take` reloads into it. */
  readonly update: { subscribe(listener: () => void): () => void; ready(): boolean; take(): void };
}

/** A page that can do nothing: for components under test. */
export const NO_SERVICES: PageServices = {
  startingPoints: [],
  saveFile: () => undefined,
  saveText: () => undefined,
  chooseFile: () => undefined,
  cutSheets: () => () => undefined,
  update: { subscribe: () => () => undefined, ready: () => false, take: () => undefined },
};

export const PageServicesContext = createContext<PageServices>(NO_SERVICES);
