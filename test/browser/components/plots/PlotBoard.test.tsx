import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { PlotBar } from '../../../../src/ui/frame/PlotBar.tsx';
import { PlotBoard } from '../../../../src/ui/plots/index.ts';
import { demo, show, testStore } from './openWorkbench.tsx';

const views = () => [...document.querySelectorAll('[data-view]')].map((plot) => plot.getAttribute('data-view'));

test('wide: the response stays, the second question is chosen', async () => {
  await page.viewport(1200, 800);
  show(testStore(), <PlotBoard />);
  expect(views()).toEqual(['response', 'load']);
  await userEvent.click(screen.getByRole('button', { name: 'What moves' }));
  expect(views()).toEqual(['response', 'travel']);
  await userEvent.click(screen.getByRole('button', { name: 'port air' }));
  expect(views()).toEqual(['response', 'port-air']);
  await userEvent.click(screen.getByRole('button', { name: 'When it arrives' }));
  expect(views()).toEqual(['response', 'phase']);
  expect(screen.getByRole('button', { name: 'When it arrives' }).getAttribute('aria-pressed')).toBe('true');
});

test('narrow: one plot answers the chosen question', async () => {
  await page.viewport(390, 844);
  show(testStore(), <PlotBoard />);
  expect(views()).toEqual(['response']);
  await userEvent.click(screen.getByRole('button', { name: 'What the amplifier sees' }));
  expect(views()).toEqual(['load']);
});

test('the lesson on port tuning shows sum, cone and port, impedance and travel at once', async () => {
  await page.viewport(1200, 800);
  show(testStore({ ...demo, opensWith: 'teach-port' }), <PlotBoard />);
  expect(views()).toEqual(['response', 'load', 'travel']);
});

test('a typed frequency is read in both plots and stays; what is no frequency gets a sentence', async () => {
  await page.viewport(1200, 800);
  const store = testStore();
  show(store, <PlotBoard bar={(pin) => <PlotBar pin={pin} />} />);
  const field = screen.getByTestId('read-at');
  await userEvent.type(field, '3.15k{Enter}');
  await waitFor(() => expect(store.getState().cursorHz).toBeCloseTo(3150, 6));
  await waitFor(() => expect(screen.getByTestId('reading-response-sum').textContent).toMatch(/dB$/));
  expect(screen.getByTestId('reading-load-ohm:V1').textContent).toMatch(/Ω$/);
  await userEvent.clear(field);
  await userEvent.type(field, '3 m{Enter}');
  await waitFor(() => expect(screen.getByRole('alert').textContent).not.toBe(''));
  expect(store.getState().cursorHz).toBeCloseTo(3150, 6);
});

test('the listening angle is a value at hand, and the title says it', async () => {
  await page.viewport(1200, 800);
  const store = testStore();
  show(store, <PlotBoard bar={(pin) => <PlotBar pin={pin} />} />);
  const angle = screen.getByLabelText(/Horizontal listening angle/);
  angle.focus();
  await userEvent.keyboard('{ArrowUp}');
  expect(store.getState().project.listening.horizontalDeg).toBe(1);
  await waitFor(() => expect(screen.getByText(/1° right/)).toBeDefined());
});
