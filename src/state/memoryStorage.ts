import type { ProjectStorage } from './projectStorage.ts';
import { asideRecord, newRecord, otherRecords, type StoredRecord, savedRecord, workFor } from './storedRecord.ts';

/**
 * Storage that lasts as long as the records given to it: for tests, for scripts and where a browser has no storage.
 * Two storages over the same map behave like two windows of one browser.
 */
export function memoryStorage(records = new Map<string, StoredRecord>()): ProjectStorage {
  const all = () => [...records.values()];
  const put = (record: StoredRecord) => {
    records.set(record.key, record);
    return record;
  };
  return {
    load: async (own) => workFor(all(), own),
    async save(slot, title, text) {
      const record = savedRecord(all(), slot, title, text);
      return record === null ? { kind: 'overtaken' } : { kind: 'saved', slot: put(record) };
    },
    create: async (title, text) => put(newRecord(all(), title, text)),
    async keepAside(key, kind) {
      const record = asideRecord(all(), key, kind);
      if (record === null) throw new Error(`Nothing is stored as ${key}.`);
      return put(record).name;
    },
    others: async (key) => otherRecords(all(), key),
    read: async (key) => records.get(key)?.text ?? null,
  };
}
