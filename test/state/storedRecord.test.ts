import { describe, expect, it } from 'vitest';
import { newRecord, otherRecords, type StoredRecord, savedRecord, workFor } from '../../src/state/storedRecord.ts';

const first = newRecord([], 'Box', 'one');
const second = newRecord([first], 'Box', 'two');

describe('stored records', () => {
  it('get keys and names of their own', () => {
    expect([first.key, first.name, first.revision]).toEqual(['work-1', 'Box', 1]);
    expect([second.key, second.name, second.revision]).toEqual(['work-2', 'Box, copy 2', 1]);
    expect(newRecord([first, second], 'Box', '').name).toBe('Box, copy 3');
  });

  it('are saved only under the revision that was read', () => {
    const saved = savedRecord([first, second], first, 'Box', 'new')!;
    expect(saved).toEqual({ ...first, text: 'new', revision: 2, order: 3 });
    expect(savedRecord([saved, second], first, 'Box', 'late')).toBeNull();
    expect(savedRecord([second], first, 'Box', 'gone')).toBeNull();
    const aside: StoredRecord = { ...first, kind: 'damaged' };
    expect(savedRecord([aside], aside, 'Box', 'over')).toBeNull();
  });

  it('follow the name of their project', () => {
    expect(savedRecord([first, second], second, 'Box', '')!.name).toBe('Box, copy 2');
    expect(savedRecord([first, second], second, 'Shelf', '')!.name).toBe('Shelf');
  });

  it('are loaded by who was written last, and listed the same way', () => {
    const saved = savedRecord([first, second], first, 'Box', 'new')!;
    expect(workFor([saved, second], null)).toBe(saved);
    expect(workFor([{ ...saved, kind: 'damaged' }, second], null)).toBe(second);
    expect(workFor([], null)).toBeNull();
    expect(workFor([saved, second], second.key)).toBe(second);
    expect(workFor([saved, second], 'gone')).toBe(saved);
    expect(otherRecords([second, saved], null).map(({ key }) => key)).toEqual(['work-1', 'work-2']);
    expect(otherRecords([second, saved], 'work-1').map(({ key }) => key)).toEqual(['work-2']);
  });
});
