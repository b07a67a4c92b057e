import type { KeptAside } from './workbench.ts';

/** Where one document is stored, and how often it has been written there. */
export interface StoredSlot {
  readonly key: string;
  readonly revision: number;
}

export interface StoredWork extends StoredSlot {
  readonly name: string;
  readonly text: string;
}

/** `overtaken`: someone else has written this slot since; nothing was changed. */
export type SaveOutcome = { readonly kind: 'saved'; readonly slot: StoredSlot } | { readonly kind: 'overtaken' };

/**
 * Where documents survive the page. Every promise settles only after the transaction has completed or failed; each
 * method is one transaction, so that two windows never see half of the other's write.
 */
export interface ProjectStorage {
  /** The work of slot `own` where it is there, else the work written last, kept-aside work left out; null when there is none. */
  load(own: string | null): Promise<StoredWork | null>;
  /** Overwrites a slot if its revision is still the given one. `title` is the project's name. */
  save(slot: StoredSlot, title: string, text: string): Promise<SaveOutcome>;
  /** A new slot. Its name is the title, with ", copy 2" and so on where that is taken. */
  create(title: string, text: string): Promise<StoredWork>;
  /** Marks a slot as not to be loaded or overwritten again. Returns the name under which it is kept. */
  keepAside(key: string, kind: 'damaged' | 'newer'): Promise<string>;
  /** Everything but the slot of that key. */
  others(key: string | null): Promise<readonly KeptAside[]>;
  read(key: string): Promise<string | null>;
}

/**
 * Which slot this window goes on with, over a reload but not in other windows: without it a reloaded window would take up
 * whatever another one wrote last.
 */
export interface WindowMemory {
  load(): string | null;
  save(slotKey: string): void;
}
