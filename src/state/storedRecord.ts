import type { StoredSlot } from './projectStorage.ts';
import type { KeptAside } from './workbench.ts';

/** One stored document as the storage holds it. */
export interface StoredRecord {
  readonly key: string;
  /** The project's own name, which several records may share. */
  readonly title: string;
  /** Tells it apart from all other records. */
  readonly name: string;
  readonly text: string;
  /** How often this slot has been written. */
  readonly revision: number;
  /** Rises with every write to any slot: the greatest is the work that was written last. */
  readonly order: number;
  readonly kind: 'work' | 'damaged' | 'newer';
}

/** The work that a window begins with: its own slot where that is there to be worked on, else what was written last. */
export function workFor(records: readonly StoredRecord[], own: string | null): StoredRecord | null {
  const works = records.filter(({ kind }) => kind === 'work');
  return works.find(({ key }) => key === own) ?? works.reduce<StoredRecord | null>(later, null);
}

const later = (a: StoredRecord | null, b: StoredRecord): StoredRecord => (a === null || b.order > a.order ? b : a);

/** A record for a new slot. */
export function newRecord(records: readonly StoredRecord[], title: string, text: string): StoredRecord {
  const order = nextOrder(records);
  return { key: `work-${order}`, title, name: freeName(records, title), text, revision: 1, order, kind: 'work' };
}

/** The slot's record written once more; null when somebody else has written or set aside this slot since. */
export function savedRecord(
  records: readonly StoredRecord[],
  slot: StoredSlot,
  title: string,
  text: string,
): StoredRecord | null {
  const present = records.find((record) => record.key === slot.key);
  if (present?.kind !== 'work' || present.revision !== slot.revision) return null;
  const name = present.title === title ? present.name : freeName(records, title);
  return { ...present, title, name, text, revision: slot.revision + 1, order: nextOrder(records) };
}

/** The record marked as kept aside, its name saying why. */
export function asideRecord(
  records: readonly StoredRecord[],
  key: string,
  kind: 'damaged' | 'newer',
): StoredRecord | null {
  const present = records.find((record) => record.key === key);
  if (!present) return null;
  const name = freeName(records, `${present.name}, ${kind === 'damaged' ? 'unreadable' : 'newer version'}`);
  return { ...present, kind, name };
}

/** Everything but one slot, as the screen lists it: last written first. */
export const otherRecords = (records: readonly StoredRecord[], key: string | null): readonly KeptAside[] =>
  records
    .filter((record) => record.key !== key)
    .sort((a, b) => b.order - a.order)
    .map((record) => ({ key: record.key, name: record.name, kind: record.kind === 'work' ? 'copy' : record.kind }));

const nextOrder = (records: readonly StoredRecord[]): number => Math.max(0, ...records.map(({ order }) => order)) + 1;

function freeName(records: readonly StoredRecord[], name: string): string {
  const taken = new Set(records.map((record) => record.name));
  let free = name;
  for (let k = 2; taken.has(free); k++) free = `${name}, copy ${k}`;
  return free;
}
