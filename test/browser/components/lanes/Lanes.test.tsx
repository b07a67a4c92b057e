import { act, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, test, vi } from 'vitest';
import { formatNetlist } from '../../../../src/core/circuit/netlist/index.ts';
import { WorkbenchContext } from '../../../../src/ui/index.ts';
import { Lanes } from '../../../../src/ui/lanes/Lanes.tsx';
import { waysInOrder } from '../../../../src/ui/waysInOrder.ts';
import { demo, testStore } from '../plots/openWorkbench.tsx';

let store = testStore();
const partIds = () => store.getState().project.network.parts.map((part) => part.id);
const part = (id: string) => store.getState().project.network.parts.find((candidate) => candidate.id === id);
/** A part in the drawing; drivers stand on the front view too. */
const handleOf = (id: string) =>
  within(screen.getByRole('region', { name: 'Crossover circuit' })).getByRole('button', {
    name: new RegExp(`^${id}, `),
  });
const show = (widthPx = 1400) =>
  render(
    <div style={{ width: widthPx }}>
      <WorkbenchContext value={store}>
        <Lanes />
      </WorkbenchContext>
    </div>,
  );

beforeEach(() => {
  store = testStore();
});

test('a row per way in lane order, its card beside its lane', async () => {
  show();
  const names = (await screen.findAllByRole('article')).map((card) => card.getAttribute('aria-label'));
  expect(names).toEqual(waysInOrder(demo).map((way) => `${way.name}: ${way.driver?.name}`));
  const speaker = handleOf('LS2').getBoundingClientRect();
  const card = screen.getByRole('article', { name: /^mid/ }).getBoundingClientRect();
  expect(speaker.top).toBeGreaterThan(card.top);
  expect(speaker.top).toBeLessThan(card.bottom + 60);
});

test('every part can be reached and says what it is', () => {
  show();
  for (const id of partIds()) expect(handleOf(id)).toBeTruthy();
  expect(screen.getByRole('button', { name: 'C3, 22 µF, from hi to m1' })).toBeTruthy();
});

test('the pointer in a lane lifts its curve, and lets it go', async () => {
  show();
  await userEvent.hover(screen.getByRole('article', { name: /^tweeter/ }));
  expect(store.getState().lifted).toBe('LS3');
  await userEvent.unhover(screen.getByRole('article', { name: /^tweeter/ }));
  expect(store.getState().lifted).toBeNull();
  handleOf('L1').focus();
  expect(store.getState().lifted).toBe('LS1');
});

test('Enter on a part opens what can be done with it; Escape brings the focus back', async () => {
  show();
  const handle = handleOf('R2');
  handle.focus();
  await userEvent.keyboard('{Enter}');
  const sheet = screen.getByRole('dialog');
  expect(sheet.contains(document.activeElement)).toBe(true);
  expect(store.getState().selection).toEqual({ kind: 'part', id: 'R2' });
  await userEvent.keyboard('{Escape}');
  expect(screen.queryByRole('dialog')).toBeNull();
  expect(document.activeElement).toBe(handle);
});

test('a part put in series is drawn, picked and ready for its value', async () => {
  show();
  handleOf('R2').focus();
  await userEvent.keyboard('{Enter}');
  await userEvent.click(screen.getByRole('button', { name: 'Insert in series after: capacitor' }));
  const added = partIds().find((id) => !demo.network.parts.some((old) => old.id === id))!;
  expect(part(added)?.kind).toBe('capacitor');
  expect(part(added)?.nodes).toContain(part('R2')?.nodes[1]);
  expect(screen.queryByRole('dialog')).toBeNull();
  await waitFor(() =>
    expect(document.activeElement).toBe(screen.getByRole('spinbutton', { name: `${added} capacitance` })),
  );
});

test('swapping, adding across, moving an end and removing are one command each', async () => {
  show();
  const openSheet = async (id: string) => {
    handleOf(id).focus();
    await userEvent.keyboard('{Enter}');
    return within(screen.getByRole('dialog'));
  };
  let sheet = await openSheet('C4');
  await userEvent.selectOptions(sheet.getByRole('combobox', { name: 'C4: other end at node' }), 'm3');
  expect(part('C4')?.nodes).toEqual(['m2', 'm3']);
  await userEvent.click(sheet.getByRole('button', { name: 'Add across: resistor' }));
  expect(partIds()).toContain('R6');
  sheet = await openSheet('R2');
  await userEvent.click(sheet.getByRole('button', { name: 'Swap for a: coil' }));
  expect(partIds()).not.toContain('R2');
  const present = partIds().length;
  sheet = await openSheet('C7');
  await userEvent.click(sheet.getByRole('button', { name: 'remove and close up' }));
  expect(partIds()).toHaveLength(present - 1);
  for (let k = 0; k < 4; k++) store.getState().undo();
  expect(store.getState().project).toBe(demo);
});

test('a refused edit says why beside its button', async () => {
  show();
  handleOf('LS3').focus();
  await userEvent.keyboard('{Enter}');
  const sheet = within(screen.getByRole('dialog'));
  const [plus] = part('LS3')?.nodes ?? [];
  const minusChoice = sheet.getByRole('combobox', { name: 'LS3: minus end at node' });
  await userEvent.selectOptions(minusChoice, plus!);
  expect(sheet.getByRole('alert').textContent?.length).toBeGreaterThan(10);
  expect(part('LS3')).toBe(demo.network.parts.find((candidate) => candidate.id === 'LS3'));
});

test('a speaker is reversed from its menu', async () => {
  show();
  fireEvent.contextMenu(handleOf('LS2'));
  await userEvent.click(screen.getByRole('button', { name: 'reverse it' }));
  expect(part('LS2')?.nodes).toEqual([...(demo.network.parts.find(({ id }) => id === 'LS2')?.nodes ?? [])].reverse());
});

test('a textbook section goes before the chosen speaker, with source and assumptions shown first', async () => {
  show();
  await userEvent.click(screen.getByRole('button', { name: 'textbook sections' }));
  const panel = within(screen.getByRole('region', { name: 'Textbook sections' }));
  await userEvent.selectOptions(panel.getByLabelText('section'), 'l-pad');
  expect(panel.getByText(/^Source:/)).toBeTruthy();
  await userEvent.click(panel.getByRole('button', { name: 'put it before tweeter' }));
  const added = partIds().filter((id) => !demo.network.parts.some((old) => old.id === id));
  expect(added.map((id) => part(id)?.kind)).toEqual(['resistor', 'resistor']);
  // The panel stays for the next section, says what went in, and takes that back with the undo.
  expect(panel.getByRole('status').textContent).toContain(`${added.join(', ')} put before tweeter`);
  act(() => store.getState().undo());
  expect(panel.getByRole('status').textContent).toBe('');
});

test('a section has preferred values unless the exact ones are asked for', async () => {
  show();
  await userEvent.click(screen.getByRole('button', { name: 'textbook sections' }));
  const panel = within(screen.getByRole('region', { name: 'Textbook sections' }));
  const rounded = panel.getByRole('checkbox', { name: /nearest values of E12/ }) as HTMLInputElement;
  const put = panel.getByRole('button', { name: 'put it before tweeter' });
  expect(rounded.checked).toBe(true);
  await userEvent.click(put);
  await userEvent.click(rounded);
  await userEvent.click(put);
  const farads = store
    .getState()
    .project.network.parts.flatMap((one) =>
      one.kind === 'capacitor' && !demo.network.parts.some((old) => old.id === one.id) ? [one.farad] : [],
    );
  const E12 = [1, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2];
  const isPreferred = (farad: number) => E12.includes(Number(farad.toExponential().split('e')[0]));
  expect(farads.map(isPreferred)).toEqual([true, false]);
});

test('what lies open about one document closes when another takes its place', async () => {
  show();
  await userEvent.click(screen.getByRole('button', { name: 'textbook sections' }));
  await userEvent.click(screen.getByRole('button', { name: /Edit the data sheet of 28 mm/ }));
  expect(screen.getByRole('region', { name: 'Textbook sections' })).toBeTruthy();
  const sheets = () => document.querySelectorAll('.driver-editor').length;
  expect(sheets()).toBe(1);
  act(() => store.getState().open({ ...demo, name: 'Other' }));
  expect(screen.queryByRole('region', { name: 'Textbook sections' })).toBeNull();
  expect(sheets()).toBe(0);
});

test('a drawing gets the width that it needs where the other columns can spare it', async () => {
  show(1280);
  const scroller = () => document.querySelector('.lanes-scroller')!;
  await waitFor(() => expect(scroller().scrollWidth).toBeGreaterThan(0));
  expect(scroller().scrollWidth).toBeLessThanOrEqual(scroller().clientWidth);
});

test('circuit text is refused with line numbers and kept; what is understood replaces the circuit', async () => {
  show();
  await userEvent.click(screen.getByRole('button', { name: 'circuit as text' }));
  const text = screen.getByRole('textbox', { name: /One part a line/ }) as HTMLTextAreaElement;
  expect(text.value).toBe(formatNetlist(demo.network.parts));
  const lines = demo.network.parts.length;
  fireEvent.change(text, { target: { value: `${text.value}Q7 a b 3\n` } });
  await userEvent.click(screen.getByRole('button', { name: 'use this circuit' }));
  expect(screen.getByText(new RegExp(`Line ${lines + 1}`))).toBeTruthy();
  expect(text.value).toContain('Q7');
  expect(store.getState().project).toBe(demo);
  fireEvent.change(text, { target: { value: 'V1 in 0\nLS1 in 0 woofer\nR1 in 0 100\n' } });
  await userEvent.click(screen.getByRole('button', { name: 'use this circuit' }));
  expect(partIds()).toEqual(['V1', 'LS1', 'R1']);
});

test('text without an amplifier line is driven by the present one, and that is said', async () => {
  show();
  await userEvent.click(screen.getByRole('button', { name: 'circuit as text' }));
  const text = screen.getByRole('textbox', { name: /One part a line/ });
  fireEvent.change(text, { target: { value: 'LS1 in 0 woofer\nR1 in 0 10\n' } });
  await userEvent.click(screen.getByRole('button', { name: 'use this circuit' }));
  expect(partIds()).toEqual(['V1', 'LS1', 'R1']);
  const said = 'The text has no amplifier line; this one was kept from the circuit before: “V1 in 0”.';
  expect(screen.getByText(said, { exact: false }).textContent).toContain('Write a V line');
  fireEvent.change(text, { target: { value: 'V1 in 0\nLS1 in 0 woofer\n' } });
  expect(screen.queryByText(said, { exact: false })).toBeNull();
  await userEvent.click(screen.getByRole('button', { name: 'use this circuit' }));
  expect(partIds()).toEqual(['V1', 'LS1']);
  expect(screen.queryByText(said, { exact: false })).toBeNull();
});

test('the parts list is copied as columns', async () => {
  const write = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
  show();
  await userEvent.click(screen.getByRole('button', { name: 'circuit as text' }));
  // The spy stands in for a clipboard that a page in the background may not use.
  fireEvent.click(screen.getByRole('button', { name: 'copy the parts list' }));
  await screen.findByText('Parts list copied.');
  expect(write.mock.calls[0]?.[0]).toContain('C3\tcapacitor\t22 µF');
  write.mockRestore();
});

test('the text for a circuit simulator is copied, and what differs in it is said', async () => {
  const write = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
  show();
  await userEvent.click(screen.getByRole('button', { name: 'circuit as text' }));
  fireEvent.click(screen.getByRole('button', { name: 'copy for a circuit simulator' }));
  await screen.findByText('Circuit for a simulator copied.');
  expect(write.mock.calls[0]?.[0]).toMatch(/^R_LS1_coil .* 5\.6$/m);
  expect(write.mock.calls[0]?.[0]).toMatch(/\.end\n$/);
  const remarks = within(screen.getByRole('list', { name: 'About the text for a simulator' }));
  expect(remarks.getByText(/semi-inductance of LS1 .* % off/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'copy the parts list' }));
  await screen.findByText('Parts list copied.');
  expect(screen.queryByRole('list', { name: 'About the text for a simulator' })).toBeNull();
  write.mockRestore();
});

test('a fault in the circuit is lit, and the last good picture stays', async () => {
  const { container } = show();
  expect(container.querySelectorAll('[data-lit="fault"]')).toHaveLength(0);
  const { evaluation } = store.getState();
  const loose = { kind: 'capacitor', id: 'C99', nodes: ['lost', 'alone'], farad: 1e-6, esrOhm: 0, note: '' } as const;
  store.getState().dispatch({ type: 'replace-network', parts: [...demo.network.parts, loose] });
  expect(store.getState().problems.length).toBeGreaterThan(0);
  expect(store.getState().evaluation).toBe(evaluation);
  await waitFor(() => expect(container.querySelectorAll('[data-lit="fault"]').length).toBeGreaterThan(0));
  expect(handleOf('LS3')).toBeTruthy();
  expect(await screen.findAllByRole('article')).toHaveLength(3);
});

test('on a narrow screen each way has its stretch of the circuit above its card, the cabinet at the end', () => {
  show(390);
  const tweeter = screen.getByRole('region', { name: 'tweeter' });
  expect(within(tweeter).getByRole('button', { name: /^C5, / })).toBeTruthy();
  expect(within(tweeter).getByRole('article')).toBeTruthy();
  for (const id of partIds())
    expect(screen.getAllByRole('button', { name: new RegExp(`^${id}, .*(from|plus)`) })).toHaveLength(1);
});
