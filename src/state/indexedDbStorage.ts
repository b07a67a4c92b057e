import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { ProjectStorage } from './projectStorage.ts';
import { asideRecord, newRecord, otherRecords, type StoredRecord, savedRecord, workFor } from './storedRecord.ts';

interface WorksSchema extends DBSchema {
  works: { key: string; value: StoredRecord };
}

const STORE = 'works';

/**
 * Storage in the browser's IndexedDB. A save reads and writes in one transaction, so two windows cannot overtake each
 * other unseen, and is acknowledged when the browser has handed it to the disk (`strict`), not before.
 */
export function indexedDbStorage(databaseName = 'conewright'): ProjectStorage {
  let opened: Promise<IDBPDatabase<WorksSchema>> | null = null;
  const database = () => {
    opened ??= openDB<WorksSchema>(databaseName, 1, {
      upgrade: (db) => {
        db.createObjectStore(STORE, { keyPath: 'key' });
      },
      // A newer page in another window wants to change the layout: let it, and open again at the next use.
      blocking: () => close(),
      terminated: () => {
        opened = null;
      },
    });
    opened.catch(() => {
      opened = null;
    });
    return opened;
  };
  const close = () => {
    opened?.then((db) => db.close());
    opened = null;
  };
  const all = async () => (await database()).getAll(STORE);

  /** Reads all records and writes the one that `make` gives, in one transaction; nothing where it gives null. */
  async function write(make: (records: readonly StoredRecord[]) => StoredRecord | null): Promise<StoredRecord | null> {
    const transaction = (await database()).transaction(STORE, 'readwrite', { durability: 'strict' });
    const record = make(await transaction.store.getAll());
    await Promise.all([record === null ? null : transaction.store.put(record), transaction.done]);
    return record;
  }

  return {
    load: async (own) => workFor(await all(), own),
    async save(slot, title, text) {
      const record = await write((records) => savedRecord(records, slot, title, text));
      return record === null ? { kind: 'overtaken' } : { kind: 'saved', slot: record };
    },
    async create(title, text) {
      const record = await write((records) => newRecord(records, title, text));
      if (record === null) throw new Error('A new record is never refused.');
      return record;
    },
    async keepAside(key, kind) {
      const record = await write((records) => asideRecord(records, key, kind));
      if (record === null) throw new Error(`Nothing is stored as ${key}.`);
      return record.name;
    },
    others: async (key) => otherRecords(await all(), key),
    read: async (key) => (await (await database()).get(STORE, key))?.text ?? null,
  };
}
