import { act, fireEvent, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import type { Project } from '../../../../src/core/document/schema.ts';
import { QuantityField } from '../../../../src/ui/fields/index.ts';
import { useWorkbench } from '../../../../src/ui/useWorkbench.ts';
import { show, testStore } from '../plots/openWorkbench.tsx';

/** C5 of the demonstration's tweeter, as the crossover shows it. */
function Capacitor() {
  const part = useWorkbench((s) => s.project.network.parts.find((candidate) => candidate.id === 'C5'));
  if (part?.kind !== 'capacitor') throw new Error('The demonstration has no capacitor C5.');
  return (
    <QuantityField
      label="C5 capacitance"
      kind="capacitance"
      value={part.farad}
      command={(farad) => ({ type: 'set-part', partId: 'C5', changes: { farad } })}
    />
  );
}

function Width() {
  const widthM = useWorkbench((s) => s.project.enclosure.widthM);
  return (
    <QuantityField
      label="Outside width"
      kind="length"
      metricUnit="mm"
      value={widthM}
      least={0.05}
      command={(next) => ({ type: 'set-enclosure', changes: { widthM: next } })}
    />
  );
}

const faradOf = ({ network }: Project): number => {
  const part = network.parts.find((candidate) => candidate.id === 'C5');
  return part?.kind === 'capacitor' ? part.farad : Number.NaN;
};
const open = () => {
  const store = testStore();
  store.getState().dispatch({ type: 'set-part', partId: 'C5', changes: { farad: 6.8e-6 } });
  show(
    store,
    <>
      <Capacitor />
      <Width />
    </>,
  );
  return { store, field: screen.getByRole('spinbutton', { name: 'C5 capacitance' }) };
};

test('shows number and unit, and says them to a screen reader', () => {
  const { field } = open();
  expect(field.textContent).toBe('6.8 µF');
  expect(field.getAttribute('aria-valuetext')).toBe('6.8 µF');
  expect(field.getAttribute('aria-valuenow')).toBe('6.8');
});

test('arrow keys on the closed field step at once, each press one undo step', async () => {
  const { store, field } = open();
  field.focus();
  await userEvent.keyboard('{ArrowUp}{ArrowUp}');
  expect(faradOf(store.getState().project)).toBe(10e-6);
  store.getState().undo();
  expect(faradOf(store.getState().project)).toBe(8.2e-6);
});

test('a held arrow key is one undo step', async () => {
  const { store, field } = open();
  field.focus();
  for (let press = 0; press < 5; press++) fireEvent.keyDown(field, { key: 'ArrowUp', repeat: press > 0 });
  fireEvent.keyUp(field, { key: 'ArrowUp' });
  expect(faradOf(store.getState().project)).toBe(18e-6);
  store.getState().undo();
  expect(faradOf(store.getState().project)).toBe(6.8e-6);
});

test.each([
  ['4,7 uF', 4.7e-6],
  ['2u2', 2.2e-6],
  ['470n', 470e-9],
  ['10', 10e-6],
  ['2*4.7 uF + 1.5 uF', 10.9e-6],
])('typing %s opens the field and is read', async (text, farad) => {
  const { store, field } = open();
  field.focus();
  await userEvent.keyboard(`${text.replace('{', '{{')}{Enter}`);
  // Arithmetic is fetched when it is first needed.
  await waitFor(() => expect(faradOf(store.getState().project)).toBeCloseTo(farad, 12), { timeout: 10_000 });
  await waitFor(() => expect(screen.queryByRole('textbox')).toBeNull());
  expect(document.activeElement).toBe(screen.getByRole('spinbutton', { name: 'C5 capacitance' }));
});

test('a length is read in either system', async () => {
  const { store } = open();
  await userEvent.click(screen.getByRole('spinbutton', { name: 'Outside width' }));
  await userEvent.keyboard('12 3/4 in{Enter}');
  await waitFor(() => expect(store.getState().project.enclosure.widthM).toBeCloseTo(12.75 * 0.0254, 9), {
    timeout: 10_000,
  });
});

test('the opened field says what the value was and how it steps; arrows inside it change the document', async () => {
  const { store, field } = open();
  await userEvent.click(field);
  const input = screen.getByRole('textbox', { name: 'C5 capacitance' });
  expect(input.getAttribute('aria-describedby')).toBeTruthy();
  expect(screen.getByText(/was 6.8 µF/).textContent).toContain('E12');
  await userEvent.keyboard('{ArrowUp}{ArrowUp}');
  expect(faradOf(store.getState().project)).toBe(10e-6);
  expect((input as HTMLInputElement).value).toBe('10 µF');
  await userEvent.keyboard('{Escape}');
  expect(faradOf(store.getState().project)).toBe(6.8e-6);
  expect(screen.queryByRole('textbox')).toBeNull();
});

test('a wrong entry gets a sentence, keeps its text and changes nothing', async () => {
  const { store, field } = open();
  const before = store.getState().project;
  await userEvent.click(field);
  await userEvent.clear(screen.getByRole('textbox'));
  await userEvent.keyboard('3 bananas{Enter}');
  const alert = await screen.findByRole('alert');
  expect(alert.textContent).toContain('bananas');
  expect((screen.getByRole('textbox') as HTMLInputElement).value).toBe('3 bananas');
  expect(store.getState().project).toBe(before);
  await userEvent.keyboard('{Escape}');
  expect(screen.queryByRole('alert')).toBeNull();
});

test('a value that the document refuses gets the document’s sentence', async () => {
  const { store, field } = open();
  await userEvent.click(field);
  await userEvent.clear(screen.getByRole('textbox'));
  await userEvent.keyboard('-3 uF{Enter}');
  expect((await screen.findByRole('alert')).textContent?.length).toBeGreaterThan(10);
  expect(faradOf(store.getState().project)).toBe(6.8e-6);
});

test('a refusal is said once, at the field, and goes with Escape', async () => {
  const { store, field } = open();
  await userEvent.click(field);
  await userEvent.clear(screen.getByRole('textbox'));
  await userEvent.keyboard('-3 uF{Enter}');
  await screen.findByRole('alert');
  expect(store.getState().refusal).toEqual([]);
  await userEvent.keyboard('{Escape}');
  expect(screen.queryByRole('alert')).toBeNull();
  expect(store.getState().refusal).toEqual([]);
});

test('Escape takes away what an arrow key was refused for', async () => {
  const { store, field } = open();
  // Made to refuse every edit, as a document at its bounds does.
  const { dispatch } = store.getState();
  store.setState({ dispatch: () => dispatch({ type: 'set-part', partId: 'C5', changes: { farad: -1 } }) });
  field.focus();
  await userEvent.keyboard('{ArrowUp}');
  expect(screen.getByRole('alert')).toBeTruthy();
  await userEvent.keyboard('{Escape}');
  expect(screen.queryByRole('alert')).toBeNull();
});

test.each(['opened', 'undone'])('a refused editor closes when its document is replaced: %s', async (how) => {
  const { store, field } = open();
  const other: Project = { ...store.getState().project, name: 'Other' };
  if (how === 'undone') act(() => store.getState().open(other));
  await userEvent.click(field);
  await userEvent.clear(screen.getByRole('textbox'));
  await userEvent.keyboard('3 bananas{Enter}');
  await screen.findByRole('alert');
  act(() => (how === 'undone' ? store.getState().undo() : store.getState().open(other)));
  expect(screen.queryByRole('textbox')).toBeNull();
  expect(screen.queryByRole('alert')).toBeNull();
  const { project } = store.getState();
  await userEvent.click(screen.getByRole('spinbutton', { name: 'Outside width' }));
  expect(store.getState().project).toBe(project);
});

test('arithmetic that is still being worked out does not land in another document', async () => {
  const { store, field } = open();
  field.focus();
  await userEvent.keyboard('2*4.7 uF');
  const other: Project = { ...store.getState().project, name: 'Other' };
  fireEvent.keyDown(screen.getByRole('textbox'), { key: 'Enter' });
  act(() => store.getState().open(other));
  await new Promise((done) => setTimeout(done, 300));
  expect(store.getState().project).toBe(other);
});

const pointer = (type: string, target: Element, clientX: number) =>
  fireEvent(target, new PointerEvent(type, { bubbles: true, pointerId: 1, button: 0, clientX, clientY: 5 }));

test('dragging changes the value smoothly and is one undo step', () => {
  const { store, field } = open();
  pointer('pointerdown', field, 100);
  pointer('pointermove', field, 102);
  expect(faradOf(store.getState().project)).toBe(6.8e-6);
  pointer('pointermove', field, 150);
  pointer('pointermove', field, 172);
  pointer('pointerup', field, 172);
  // 72 px of 240 px a decade, to three digits.
  expect(faradOf(store.getState().project)).toBeCloseTo(Number((6.8e-6 * 10 ** 0.3).toPrecision(3)), 12);
  expect(screen.queryByRole('textbox')).toBeNull();
  store.getState().undo();
  expect(faradOf(store.getState().project)).toBe(6.8e-6);
});

test('Escape goes back to where a drag began', () => {
  const { store, field } = open();
  pointer('pointerdown', field, 100);
  pointer('pointermove', field, 200);
  expect(faradOf(store.getState().project)).not.toBe(6.8e-6);
  fireEvent.keyDown(window, { key: 'Escape' });
  expect(faradOf(store.getState().project)).toBe(6.8e-6);
  pointer('pointermove', field, 300);
  pointer('pointerup', field, 300);
  expect(faradOf(store.getState().project)).toBe(6.8e-6);
});

test('bounds hold for stepping', async () => {
  const { store } = open();
  store.getState().dispatch({ type: 'set-enclosure', changes: { widthM: 0.0505 } });
  const width = screen.getByRole('spinbutton', { name: 'Outside width' });
  width.focus();
  await userEvent.keyboard('{ArrowDown}{ArrowDown}{ArrowDown}');
  expect(store.getState().project.enclosure.widthM).toBe(0.05);
});
