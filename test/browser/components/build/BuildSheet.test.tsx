import { act, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { expect, test, vi } from 'vitest';
import type { Project } from '../../../../src/core/document/schema.ts';
import type { CuttingAnswer, CuttingJob } from '../../../../src/state/index.ts';
import { BuildActions } from '../../../../src/ui/build/BuildActions.tsx';
import { BuildSheet } from '../../../../src/ui/build/BuildSheet.tsx';
import { NO_SERVICES, PageServicesContext, WorkbenchContext } from '../../../../src/ui/index.ts';
import { answerCutting } from '../../../../src/worker/answerCutting.ts';
import { demo, testStore } from '../plots/openWorkbench.tsx';

const bare: Project = { ...demo, drivers: demo.drivers.map((driver) => ({ ...driver, fitting: null })) };
let store = testStore();
let asked: { job: CuttingJob; hear: (answer: CuttingAnswer) => void; ended: boolean }[] = [];
const wood = () => store.getState().project.enclosure.wood;

function Sheet() {
  const [cabinets, setCabinets] = useState(2);
  return (
    <>
      <BuildActions cabinets={cabinets} />
      <BuildSheet cabinets={cabinets} setCabinets={setCabinets} />
    </>
  );
}

/** The sheet over the store; layouts are asked for and answered by hand with `answer`. */
const open = (project: Project = demo) => {
  store = testStore(project);
  asked = [];
  const cutSheets = (job: CuttingJob, hear: (answer: CuttingAnswer) => void) => {
    const one = { job, hear, ended: false };
    asked.push(one);
    return () => {
      one.ended = true;
    };
  };
  render(
    <div style={{ width: 1300 }}>
      <WorkbenchContext value={store}>
        <PageServicesContext value={{ ...NO_SERVICES, cutSheets }}>
          <Sheet />
        </PageServicesContext>
      </WorkbenchContext>
    </div>,
  );
  // On a narrow page the groups of fields begin folded.
  for (const group of document.querySelectorAll<HTMLDetailsElement>('.build-group'))
    if (!group.open) group.querySelector('summary')!.click();
};
const table = (name: string) => screen.getByRole('table', { name });
const cutRow = (name: RegExp) => within(table('Cut list')).getByRole('row', { name });
const typed = async (name: string | RegExp, text: string) => {
  const value = screen.getByRole('spinbutton', { name });
  value.focus();
  await userEvent.keyboard('{Enter}');
  await userEvent.clear(screen.getByRole('textbox'));
  await userEvent.keyboard(`${text}{Enter}`);
};
const nextJob = async (after: number) => {
  await waitFor(() => expect(asked.length).toBeGreaterThan(after));
  return asked.at(-1)!;
};

test('a thicker front shows in the cut list and takes air; undo takes it back', async () => {
  open();
  const net = () => within(table('Volumes of the chambers')).getByRole('row', { name: /^woofer chamber/ }).textContent;
  const before = net();
  await typed('Thickness of the front', '1 in');
  expect(wood().frontM).toBeCloseTo(0.0254, 12);
  await waitFor(() => expect(cutRow(/\bfront\b(?!.*back)/).textContent).toContain('25.4'));
  expect(net()).not.toBe(before);
  act(() => store.getState().undo());
  await waitFor(() => expect(net()).toBe(before));
  expect(wood().frontM).toBeNull();
});

test('an emptied thickness is as the panels again', async () => {
  open();
  await typed('Thickness of the top', '22');
  expect(wood().topM).toBeCloseTo(0.022, 12);
  screen.getByRole('spinbutton', { name: 'Thickness of the top' }).focus();
  await userEvent.keyboard('{Delete}{Enter}');
  expect(wood().topM).toBeNull();
});

test('joints: a rebate asks for its depth and is noted in the list, a mitre is at 45°', async () => {
  open();
  expect(screen.queryByRole('spinbutton', { name: 'Depth of the rebate' })).toBeNull();
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'joint' }), 'rebate');
  await typed('Depth of the rebate', '18/2');
  await waitFor(() => expect(cutRow(/left side and right side/).textContent).toContain('rebate 9 mm deep × 18 mm'));
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'joint' }), 'mitre');
  await waitFor(() => expect(cutRow(/left side and right side/).textContent).toContain('mitre 45°'));
});

test('a brace takes air and comes into the list; so does a crossover board', async () => {
  open();
  const low = () =>
    [...within(table('Volumes of the chambers')).getByRole('row', { name: /^woofer chamber/ }).children].map(
      (cell) => cell.textContent,
    );
  expect(low()[2]).toBe('1.1 L');
  await userEvent.click(screen.getByRole('button', { name: 'Add a brace to woofer chamber' }));
  await waitFor(() => expect(Number.parseFloat(low()[2] ?? '')).toBeGreaterThan(1.1));
  expect(within(table('Cut list')).getByRole('row', { name: /brace 1/ })).toBeTruthy();
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Direction of brace 1' }), 'across');
  expect(wood().braces[0]!.atM).toBeCloseTo(demo.enclosure.depthM / 2, 12);
  await typed('Openings of brace 1', '80 %');
  expect(wood().braces[0]!.openShare).toBeCloseTo(0.8, 12);
  const other = low()[5];
  await userEvent.click(screen.getByRole('button', { name: 'Allow for a crossover board' }));
  await waitFor(() => expect(low()[5]).not.toBe(other));
  await userEvent.click(screen.getByRole('button', { name: 'Remove brace 1' }));
  await waitFor(() => expect(low()[2]).toBe('1.1 L'));
});

test('a guessed cut-out says so until it is stated', async () => {
  open(bare);
  const row = () => within(table('Holes')).getByRole('row', { name: /^woofer/ });
  expect(row().textContent).toContain('guess');
  const { name } = bare.drivers.find(({ id }) => id === 'woofer')!;
  await typed(`Cut-out diameter of ${name}`, '190');
  await typed(`Magnet diameter of ${name}`, '120');
  await typed(`Screw circle diameter of ${name}`, '207');
  await typed(`Screws of ${name}`, '8');
  // The sheet follows the last edit a moment later.
  await waitFor(() => expect(row().textContent).toContain('8 on Ø 207'));
  expect(row().textContent).toContain('Ø 190');
  expect(row().textContent).not.toContain('guess');
  await userEvent.click(screen.getByRole('button', { name: `Forget the fitting of ${name}` }));
  await waitFor(() => expect(row().textContent).toContain('guess'));
});

test('what is in the way is said by name', async () => {
  open();
  await typed('Panel thickness', '40');
  const clashes = screen.getByRole('region', { name: 'Does it fit?' });
  await waitFor(() => expect(clashes.textContent).toMatch(/Cannot be built as it stands.*(tweeter|mid|woofer)/));
  expect(clashes.textContent).not.toMatch(/LS\d/);
});

test('layouts: dimmed as soon as they are of before, the old answer dropped, stopped on demand', async () => {
  open();
  const first = await nextJob(0);
  act(() => answerCutting(first.job, first.hear));
  const boards = () => document.querySelector('.sheet-groups')!;
  await waitFor(() => expect(screen.getAllByRole('img', { name: /^board 1 of/ })).toHaveLength(1));
  expect(boards().hasAttribute('data-stale')).toBe(false);

  await typed('Number of cabinets', '6');
  expect(boards().hasAttribute('data-stale')).toBe(true);
  expect(screen.getByText(/from before the change/)).toBeTruthy();
  const second = await nextJob(1);
  expect(first.ended).toBe(true);
  expect(second.job.groups[0]![0]!.count).toBe(3 * first.job.groups[0]![0]!.count);

  const answers: CuttingAnswer[] = [];
  answerCutting({ ...second.job, effort: 0 }, (answer) => answers.push(answer));
  act(() => second.hear(answers[0]!));
  expect(boards().hasAttribute('data-stale')).toBe(false);
  expect(boards().textContent).toMatch(/best found so far|proved/);
  await userEvent.click(screen.getByRole('button', { name: 'Stop' }));
  expect(second.ended).toBe(true);
  expect(screen.getByText(/Stopped/)).toBeTruthy();
});

test('a search that did not start is said', async () => {
  open();
  const { hear } = await nextJob(0);
  act(() => hear({ kind: 'failed' }));
  expect(screen.getByText(/could not be laid out/)).toBeTruthy();
});

test('the list is copied; where that is not allowed it stands there', async () => {
  open();
  const write = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
  await userEvent.click(screen.getByRole('button', { name: 'Copy the cut list' }));
  await userEvent.click(screen.getByRole('button', { name: 'For a spreadsheet' }));
  expect(write).toHaveBeenCalledWith(expect.stringMatching(/^mark,panels,pieces,[\s\S]*\nA,/));
  await screen.findByText('Comma separated list copied.');
  write.mockRejectedValue(new Error('no'));
  await userEvent.click(screen.getByRole('button', { name: 'As text' }));
  const box = await screen.findByRole<HTMLTextAreaElement>('textbox', { name: 'Cut list' });
  expect(box.value).toContain('cut list for 2 cabinets');
  write.mockRestore();
});
