import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { installKeys } from '../../../../src/app/installKeys.ts';
import { projectFileName } from '../../../../src/app/projectFileName.ts';
import { testStore } from '../plots/openWorkbench.tsx';

const acts = { saveFile: vi.fn(), chooseFile: vi.fn(), showKeys: vi.fn(), keep: vi.fn() };
let store = testStore();
let remove = (): void => undefined;
beforeEach(() => {
  for (const act of Object.values(acts)) act.mockClear();
  store = testStore();
  remove = installKeys(store, acts, acts.showKeys, acts.keep);
});
afterEach(() => {
  remove();
  document.body.replaceChildren();
});

test('Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y undo and redo, Ctrl+S saves, Ctrl+O opens', async () => {
  store.getState().dispatch({ type: 'set-drive', driveV: 5 });
  await userEvent.keyboard('{Control>}z{/Control}');
  expect(store.getState().project.chain.driveV).toBe(2.83);
  await userEvent.keyboard('{Control>}{Shift>}z{/Shift}{/Control}');
  expect(store.getState().project.chain.driveV).toBe(5);
  await userEvent.keyboard('{Control>}z{/Control}{Control>}y{/Control}');
  expect(store.getState().project.chain.driveV).toBe(5);
  await userEvent.keyboard('{Control>}s{/Control}{Control>}o{/Control}');
  expect(acts.saveFile).toHaveBeenCalledOnce();
  expect(acts.chooseFile).toHaveBeenCalledOnce();
});

test('letters work alone, but not while something is typed', async () => {
  await userEvent.keyboard('l?k');
  expect(store.getState().settings.largeType).toBe(true);
  expect(acts.showKeys).toHaveBeenCalledOnce();
  expect(acts.keep).toHaveBeenCalledOnce();
  const field = document.body.appendChild(document.createElement('input'));
  field.focus();
  await userEvent.keyboard('lk?');
  expect(field.value).toBe('lk?');
  expect(store.getState().settings.largeType).toBe(true);
  expect(acts.keep).toHaveBeenCalledOnce();
});

test('a project’s file is named after it', () => {
  expect(projectFileName('Reading room three-way')).toBe('reading-room-three-way.conewright.json');
  expect(projectFileName('Café “№ 2” / Süd')).toBe('cafe-no-2-sud.conewright.json');
  expect(projectFileName('???')).toBe('project.conewright.json');
});
