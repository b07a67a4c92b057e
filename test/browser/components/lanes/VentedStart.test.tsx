import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import lesson from '../../../../demo-data/port-lesson/port-lesson.conewright.json';
import type { Project } from '../../../../src/core/document/schema.ts';
import { WorkbenchContext } from '../../../../src/ui/index.ts';
import { ChamberPanel } from '../../../../src/ui/lanes/enclosure/ChamberPanel.tsx';
import { useWorkbench } from '../../../../src/ui/useWorkbench.ts';
import { demo, testStore } from '../plots/openWorkbench.tsx';

function Panel({ id }: { readonly id: string }) {
  const chamber = useWorkbench((s) => s.project.enclosure.chambers.find((entry) => entry.id === id));
  return chamber ? <ChamberPanel chamber={chamber} /> : null;
}
const open = (project: Project, id: string) => {
  const store = testStore(project);
  render(
    <WorkbenchContext value={store}>
      <Panel id={id} />
    </WorkbenchContext>,
  );
  return store;
};

test('the flat vented box is offered with family, losses and source, and lands as one step', async () => {
  const store = open(lesson as unknown as Project, 'box');
  const before = store.getState().project;
  const offer = within(screen.getByRole('region', { name: 'Flat vented box for box' }));
  expect(offer.getByText(/QB3/)).toBeTruthy();
  expect(offer.getByText(/QL 10 as set for this chamber.*Source: A\. N\. Thiele/)).toBeTruthy();
  const words = /([\d.]+) L net, tuned to ([\d.]+) Hz/.exec(offer.getByText(/QB3/).textContent ?? '');
  await userEvent.click(offer.getByRole('button', { name: 'Make box the flat vented box' }));
  const figure = store.getState().evaluation!.keyFigures.chambers.find(({ id }) => id === 'box')!;
  // Three digits are shown.
  expect(figure.netM3 * 1000).toBeCloseTo(Number(words?.[1]), 1);
  expect(figure.tuningHz).toBeCloseTo(Number(words?.[2]), 0);
  store.getState().undo();
  expect(store.getState().project).toBe(before);
});

test('a sealed chamber gets its port in the same step', async () => {
  const noPort = { ...(lesson as unknown as Project) };
  const store = open({ ...noPort, enclosure: { ...noPort.enclosure, ports: [] } }, 'box');
  expect(screen.getByText(/a round port on the back, .* across/)).toBeTruthy();
  await userEvent.click(screen.getByRole('button', { name: 'Make box the flat vented box' }));
  expect(store.getState().project.enclosure.ports).toHaveLength(1);
  store.getState().undo();
  expect(store.getState().project.enclosure.ports).toHaveLength(0);
});

test('a box that does not fit is refused in words, without a button', () => {
  open(demo, 'low');
  expect(screen.getByText(/would have to be .* L gross/)).toBeTruthy();
  expect(screen.queryByRole('button', { name: /flat vented box/ })).toBeNull();
});
