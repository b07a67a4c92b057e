import { expect, test, vi } from 'vitest';
import { EDIT_MARK, markEdits, PAINT_MEASURE } from '../../../../src/app/markEdits.ts';
import { testStore } from '../plots/openWorkbench.tsx';

const count = (name: string) => performance.getEntriesByName(name).length;

test('an edit is marked and measured to its frame; edits of one frame are one measure, refused ones none', async () => {
  const store = testStore();
  markEdits(store);
  const [marks, measures] = [count(EDIT_MARK), count(PAINT_MEASURE)];
  store.getState().dispatch({ type: 'set-drive', driveV: 3 });
  store.getState().dispatch({ type: 'set-drive', driveV: 4 });
  expect(count(EDIT_MARK)).toBe(marks + 1);
  await vi.waitFor(() => expect(count(PAINT_MEASURE)).toBe(measures + 1));
  const [entry] = performance.getEntriesByName(PAINT_MEASURE).slice(-1);
  const [mark] = performance.getEntriesByName(EDIT_MARK).slice(-1);
  expect(entry?.startTime).toBe(mark?.startTime);
  expect(store.getState().dispatch({ type: 'set-drive', driveV: -1 }).length).toBeGreaterThan(0);
  expect(count(EDIT_MARK)).toBe(marks + 1);
});
