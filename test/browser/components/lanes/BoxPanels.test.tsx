import { fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import lesson from '../../../../demo-data/port-lesson/port-lesson.conewright.json';
import { applyCommand } from '../../../../src/core/document/applyCommand.ts';
import type { Command } from '../../../../src/core/document/command.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { newLine } from '../../../../src/core/document/start/newLine.ts';
import { newProject } from '../../../../src/core/document/start/newProject.ts';
import { newRadiator } from '../../../../src/core/document/start/newRadiator.ts';
import { selectionOf } from '../../../../src/ui/frame/selectionOf.ts';
import { WorkbenchContext } from '../../../../src/ui/index.ts';
import { EnclosurePanels } from '../../../../src/ui/lanes/enclosure/EnclosurePanels.tsx';
import '../../../../src/ui/frame/frame.css';
import '../../../../src/ui/lanes/lanes.css';
import { testStore } from '../plots/openWorkbench.tsx';

const box = lesson as unknown as Project;
const withCommands = (project: Project, ...commands: Command[]): Project => {
  const done = applyCommand(project, { type: 'together', commands });
  if (!done.ok) throw new Error('The document of the test cannot be made.');
  return done.value;
};
function open(project: Project, width = 420) {
  const store = testStore(project);
  render(
    <div style={{ width }}>
      <WorkbenchContext value={store}>
        <EnclosurePanels />
      </WorkbenchContext>
    </div>,
  );
  return store;
}
const pick = (name: RegExp | string) => userEvent.click(screen.getByRole('button', { name }));
const figure = (store: ReturnType<typeof open>) => store.getState().evaluation!.keyFigures.chambers[0]!;

test('each starting point is one step that solves, and undo takes it back', async () => {
  const store = open(box);
  const before = store.getState().project;
  await pick('woofer');
  await userEvent.click(screen.getByText('Make it another kind of box'));
  const rows = within(screen.getByRole('list')).getAllByRole('button');
  expect(rows.map((row) => row.textContent)).toEqual([
    'sealed',
    'vented',
    'passive radiator',
    'band-pass',
    'isobaric',
    'open baffle',
    'transmission line',
    'aperiodic vent',
  ]);
  for (const row of rows) {
    await userEvent.click(row);
    const { project, problems, undo } = store.getState();
    expect(problems, row.textContent ?? '').toEqual([]);
    expect(project, row.textContent ?? '').not.toBe(before);
    undo();
    expect(store.getState().project, row.textContent ?? '').toBe(before);
  }
});

test('a start that cannot be says why beside its button', async () => {
  open(withCommands(box, { type: 'set-mount', partId: 'LS1', changes: { chamberId: null } }));
  await pick('woofer');
  await userEvent.click(screen.getByText('Make it another kind of box'));
  await userEvent.click(screen.getByRole('button', { name: 'Make woofer isobaric' }));
  expect(screen.getByRole('alert').textContent).toMatch(/LS1 has no chamber behind it/);
});

test('air behind and in front: a chamber changes sides, an open back has neither', async () => {
  const store = open(box);
  const mount = () => store.getState().project.enclosure.mounts[0]!;
  await pick('woofer');
  const before = screen.getByRole('combobox', { name: 'Air in front of woofer' });
  await userEvent.selectOptions(before, 'box');
  expect([mount().chamberId, mount().frontChamberId]).toEqual([null, 'box']);
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Chamber of woofer' }), 'box');
  expect([mount().chamberId, mount().frontChamberId]).toEqual(['box', null]);
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Chamber of woofer' }), 'open: bare baffle');
  expect([mount().chamberId, mount().frontChamberId, mount().back]).toEqual([null, null, 'open']);
  expect(store.getState().problems).toEqual([]);
});

test('parts are added to the chosen chamber and picked, and can be removed again', async () => {
  const store = open(newProject());
  for (const [name, kind] of [
    ['Add a port to Chamber 1', 'port'],
    ['Add a passive radiator to Chamber 1', 'radiator'],
    ['Add a transmission line to Chamber 1', 'duct'],
  ] as const) {
    await pick(name);
    expect(store.getState().selection?.kind).toBe(kind);
    expect(store.getState().problems).toEqual([]);
    await pick(/^remove this/);
    expect(store.getState().selection).toBeNull();
  }
  await pick('Add a chamber');
  expect(store.getState().selection).toEqual({ kind: 'chamber', id: 'chamber-2' });
});

test('a place in a radiator or a line is shown by picking it', () => {
  const project = withCommands(
    box,
    { type: 'add-radiator', radiator: newRadiator(box, 'box') },
    { type: 'add-line', line: newLine(box, 'box') },
  );
  for (const [kind, id] of [
    ['radiator', 'radiator-1'],
    ['duct', 'line-1'],
  ] as const) {
    expect(selectionOf({ kind, id }, project)).toEqual({ kind, id });
  }
});

test('passive radiator: tuning and notch are shown, and the mass for another tuning is taken', async () => {
  const port = box.enclosure.ports[0]!;
  const store = open(
    withCommands(
      box,
      { type: 'remove-port', id: port.id },
      { type: 'add-radiator', radiator: { ...newRadiator(box, 'box'), mmsKg: 0.012 } },
    ),
  );
  await pick('Passive radiator 1');
  const tuning = figure(store).tuningHz!;
  // Three digits are shown.
  expect(Number(/Tuned to ([\d.]+) Hz/.exec(document.body.textContent ?? '')?.[1]) / tuning).toBeCloseTo(1, 2);
  expect(screen.getByText(/notch at 25 Hz/)).toBeTruthy();
  const wish = screen.getByRole('spinbutton', { name: 'Wished tuning of Passive radiator 1' });
  wish.focus();
  await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}');
  const wished = Number(wish.getAttribute('aria-valuenow'));
  await pick('use that mass');
  // A tenth of a gram is what is set.
  expect(figure(store).tuningHz! / wished).toBeCloseTo(1, 2);
  expect(store.getState().project.enclosure.passiveRadiators[0]!.addedMassKg).toBeGreaterThan(0);
});

test('line: its quarter wave is shown and follows its length', async () => {
  const store = open(withCommands(newProject(), { type: 'add-line', line: newLine(newProject(), 'chamber-1') }));
  await pick('Transmission line 1');
  const shown = () => Number(/long at ([\d.]+) Hz/.exec(document.body.textContent ?? '')?.[1]);
  const c = store.getState().evaluation!.simulation.air.soundSpeedMPerS;
  const { lengthM, endAreaM2 } = store.getState().project.enclosure.lines[0]!;
  // 8/(3π) of the radius is the classical piston's end, 3 % above the exact tube's.
  expect(shown()).toBeCloseTo(c / (4 * (lengthM + 0.8217 * Math.sqrt(endAreaM2 / Math.PI))), 1);
  const before = shown();
  screen.getByRole('spinbutton', { name: 'Length of Transmission line 1' }).focus();
  await userEvent.keyboard('{Shift>}{ArrowUp}{/Shift}');
  expect(shown()).toBeLessThan(before);
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'End of Transmission line 1' }), 'closed');
  expect(store.getState().project.enclosure.lines[0]!.end).toEqual({ kind: 'closed' });
});

test('filling: computed from the material sets the stated gain to 1, says what it does, and goes back as its figure', async () => {
  const store = open(box);
  const chamber = () => store.getState().project.enclosure.chambers[0]!;
  await pick('box');
  const way = screen.getByRole('combobox', { name: 'How the filling of box counts' });
  await userEvent.selectOptions(way, 'computed');
  expect(chamber().fillGain).toBe(1);
  const gain = Number(/Acts ([\d.]+) times as large/.exec(document.body.textContent ?? '')?.[1]);
  expect(gain).toBeCloseTo(figure(store).apparentM3 / figure(store).netM3, 2);
  expect(screen.getByText(/Cut it to fit round a brace.*friction/)).toBeTruthy();
  expect(screen.queryByText(/gloves and mask/)).toBeNull();
  await userEvent.selectOptions(screen.getByRole('combobox', { name: /^Material/ }), 'glass-wool');
  expect(screen.getByText(/gloves and mask/)).toBeTruthy();
  const resistivity = screen.getByRole('spinbutton', { name: 'Flow resistivity of the filling in box' });
  expect(resistivity.textContent).toMatch(/^about [\d.]+ k?Pa·s\/m²$/);
  const now = Number(/Acts ([\d.]+) times as large/.exec(document.body.textContent ?? '')?.[1]);
  await userEvent.selectOptions(way, 'as stated');
  expect(chamber().filling).toBeNull();
  expect(chamber().fillGain).toBe(now);
});

test('port: what follows from it is said, and it splits over two at the same tuning', async () => {
  const store = open(box);
  const tuning = figure(store).tuningHz!;
  await pick(/^port /);
  const facts = screen.getByRole('list', { name: /^What port .* does$/ });
  expect(facts.textContent).toMatch(/free behind its inner end/);
  const shorter = Number(/Cut 5 mm too short it tunes to ([\d.]+) Hz/.exec(facts.textContent ?? '')?.[1]);
  expect(shorter).toBeGreaterThan(tuning);
  expect(facts.textContent).toMatch(
    /Air at this drive up to [\d.]+ m\/s peak at [\d.]+ Hz: (quiet|may be heard|likely heard)/,
  );
  await pick('make 2 ports of the same area in all');
  expect(store.getState().project.enclosure.ports[0]!.count).toBe(2);
  expect(figure(store).tuningHz! / tuning).toBeCloseTo(1, 2);
  screen.getByRole('spinbutton', { name: /^Stuffing of port/ }).focus();
  await userEvent.keyboard('5000{Enter}');
  expect(facts.textContent).toMatch(/aperiodic vent/);
});

test('the map’s dot sets size and length as one step, live, and a sealed box takes the port away', async () => {
  const stated: Command = { type: 'set-chamber', id: 'box', changes: { volume: { kind: 'stated', grossM3: 0.018 } } };
  const store = open(withCommands(box, stated));
  const before = store.getState().project;
  await pick('box');
  await userEvent.click(screen.getByText('Alignments: volume against tuning'));
  const dot = await screen.findByRole('slider', { name: /^Box: left and right/ });
  const travel = () => store.getState().evaluation!.keyFigures.excursions[0]!.peakM;
  const moved = [travel()];
  const at = dot.getBoundingClientRect();
  const x = at.left + at.width / 2;
  const y = at.top + at.height / 2;
  fireEvent.pointerDown(dot, { pointerId: 1, clientX: x, clientY: y, button: 0 });
  for (const step of [10, 20, 30]) {
    fireEvent.pointerMove(dot, { pointerId: 1, clientX: x - step, clientY: y - step });
    moved.push(travel());
  }
  fireEvent.pointerUp(dot, { pointerId: 1, clientX: x - 30, clientY: y - 30 });
  expect(new Set(moved).size).toBe(4);
  const after = figure(store);
  expect(after.apparentM3).toBeLessThan(0.0175);
  store.getState().undo();
  expect(store.getState().project).toBe(before);

  await userEvent.click(screen.getByText('Published boxes for this driver'));
  await userEvent.click(screen.getByRole('button', { name: 'B2' }));
  expect(store.getState().project.enclosure.ports).toHaveLength(0);
  expect(figure(store).sealed!.qtc).toBeCloseTo(Math.SQRT1_2, 1);
  await waitFor(() => expect(screen.getByTestId('map-readout').textContent).toMatch(/L, sealed/));
});

test('Escape puts a drag back without a step', async () => {
  const store = open(box);
  const before = store.getState().project;
  await pick('box');
  await userEvent.click(screen.getByText('Alignments: volume against tuning'));
  const dot = await screen.findByRole('slider', { name: /^Box: left and right/ });
  const { left, top } = dot.getBoundingClientRect();
  fireEvent.pointerDown(dot, { pointerId: 1, clientX: left + 16, clientY: top + 16, button: 0 });
  fireEvent.pointerMove(dot, { pointerId: 1, clientX: left + 8, clientY: top + 30 });
  expect(store.getState().project).not.toBe(before);
  fireEvent.keyDown(dot, { key: 'Escape' });
  expect(store.getState().project).toBe(before);
  expect(store.getState().undoLabel).toBeNull();
});

test('a box for which the cabinet has no room is refused in words, with the ways to it', async () => {
  const store = open(newProject());
  const before = store.getState().project;
  await pick('Chamber 1');
  await userEvent.click(screen.getByText('Alignments: volume against tuning'));
  await userEvent.click(await screen.findByText('Published boxes for this driver'));
  await userEvent.click(screen.getByRole('button', { name: 'C4' }));
  expect(store.getState().project).toBe(before);
  expect(screen.getByRole('status').textContent).toMatch(/would have to be [\d.]+ L gross/);
  await pick(/^make the cabinet [\d.]+ mm deep$/);
  const { enclosure } = store.getState().project;
  expect(enclosure.depthM).toBeGreaterThan(before.enclosure.depthM);
  expect(enclosure.ports).toHaveLength(1);
  expect(screen.getByRole('status').textContent).toBe('');
  store.getState().undo();
  expect(store.getState().project).toBe(before);
});
