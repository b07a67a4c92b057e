import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { levelsDbSpl } from '../../../../src/core/speaker/complexCurve.ts';
import { readAt } from '../../../../src/plot/index.ts';
import { CurvePlot } from '../../../../src/ui/plots/CurvePlot.tsx';
import { loadView, responseView } from '../../../../src/ui/plots/views/index.ts';
import { demo, show, testStore } from './openWorkbench.tsx';

const pin = { hz: null, set: () => undefined };
const sumAt = (store: ReturnType<typeof testStore>, hz: number): number => {
  const { simulation } = store.getState().evaluation ?? {};
  if (!simulation) throw new Error('The demonstration is not computed.');
  return readAt(simulation.frequenciesHz, levelsDbSpl(simulation.sum), hz) ?? Number.NaN;
};

test('the head line reads the computed sum at the cursor, to its last digit', async () => {
  const store = testStore();
  show(store, <CurvePlot view={responseView} pin={pin} />);
  for (const hz of [41.7, 630, 3150]) {
    store.getState().setCursor(hz);
    await waitFor(() =>
      expect(screen.getByTestId('reading-response-sum')).toHaveProperty(
        'textContent',
        `${sumAt(store, hz).toFixed(1)} dB`,
      ),
    );
  }
  expect(screen.getByTestId('readings-response').textContent).toContain('3.15 kHz:');
  const { simulation } = store.getState().evaluation ?? {};
  for (const { partId, pressure } of simulation?.speakers ?? []) {
    const levelDb = readAt(simulation?.frequenciesHz ?? [], levelsDbSpl(pressure), 3150) ?? Number.NaN;
    const shown = screen.getByTestId(`reading-response-cone:${partId}`).textContent;
    expect(shown).toBe(`${levelDb.toFixed(1)} dB`.replace('-', '−'));
  }
});

test('an edit moves the reading without a render: twice the drive is 6.0 dB more', async () => {
  const store = testStore();
  show(store, <CurvePlot view={responseView} pin={pin} />);
  store.getState().setCursor(1000);
  const before = sumAt(store, 1000);
  store.getState().dispatch({ type: 'set-drive', driveV: 2 * demo.chain.driveV });
  await waitFor(() =>
    expect(screen.getByTestId('reading-response-sum').textContent).toBe(`${(before + 6.0206).toFixed(1)} dB`),
  );
});

test('the canvas shows ink where the sum runs', async () => {
  const store = testStore();
  show(store, <CurvePlot view={responseView} pin={pin} />);
  await waitFor(() => expect(screen.getByText('1k')).toBeDefined());
  const canvas = document.querySelector('canvas');
  const label = document.querySelector('[data-label="sum"]');
  expect(canvas?.getAttribute('role')).toBe('img');
  expect(label?.getAttribute('visibility')).toBe('visible');
  // Along the column of 1 kHz the darkest pixel lies where the sum's level is drawn.
  const context = canvas?.getContext('2d');
  const tick = (text: string) =>
    screen.getAllByText(text).map((node) => node.getBoundingClientRect())[0] ?? new DOMRect();
  const box = canvas?.getBoundingClientRect() ?? new DOMRect();
  const x = Math.round(tick('1k').left + tick('1k').width / 2 - box.left) + 3;
  const column = context?.getImageData(x, 0, 1, Math.floor(box.height)).data ?? new Uint8ClampedArray();
  let darkest = 0;
  let best = 0;
  for (let y = 0; y < box.height - 20; y++) {
    const [r = 255, g = 255, b = 255, a = 0] = column.slice(4 * y, 4 * y + 4);
    const ink = ((255 * 3 - r - g - b) * a) / 255;
    if (ink > best) [best, darkest] = [ink, y];
  }
  const middle = (text: string) => tick(text).top + tick(text).height / 2 - box.top;
  const perDb = (middle('50') - middle('80')) / 30;
  expect(Math.abs(darkest - (middle('80') + (80 - sumAt(store, 1012)) * perDb))).toBeLessThan(4);
});

test('arrow keys step the cursor of all plots by a twelfth of an octave, Escape takes it away', async () => {
  const store = testStore();
  const set = vi.fn();
  show(store, <CurvePlot view={responseView} pin={{ hz: null, set }} />);
  const cursor = await screen.findByRole('slider');
  cursor.focus();
  await userEvent.keyboard('{ArrowRight}');
  expect(store.getState().cursorHz).toBeCloseTo(1000 * 2 ** (1 / 12), 6);
  await userEvent.keyboard('{ArrowLeft}{PageUp}');
  expect(store.getState().cursorHz).toBeCloseTo(2000, 6);
  await waitFor(() => expect(cursor.getAttribute('aria-valuetext')).toMatch(/^2.00 kHz: sum \d+\.\d dB/));
  await userEvent.keyboard('{Escape}');
  expect(store.getState().cursorHz).toBeNull();
  expect(set).toHaveBeenLastCalledWith(null);
});

test('those who cannot see the canvas have a table of the same values', async () => {
  const store = testStore();
  show(store, <CurvePlot view={responseView} pin={pin} />);
  const table = await screen.findByRole('table', {}, { timeout: 3000 });
  const row = [...table.querySelectorAll('tbody tr')].find((one) => one.textContent?.startsWith('1.00 kHz'));
  expect(row?.textContent).toContain(`${sumAt(store, 1000).toFixed(1)} dB`);
});

test('without anything to show it says so', async () => {
  const store = testStore();
  store.setState({ evaluation: null });
  show(store, <CurvePlot view={loadView} pin={pin} />);
  expect(await screen.findByText(loadView.empty)).toBeDefined();
});

test('a lifted way stands out: the other curves fade', async () => {
  const store = testStore();
  show(store, <CurvePlot view={responseView} pin={pin} />);
  await waitFor(() => expect(screen.getByText('1k')).toBeDefined());
  const canvas = document.querySelector('canvas');
  const ink = () => {
    const data = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
    let total = 0;
    for (let at = 3; at < data.length; at += 4) total += data[at] ?? 0;
    return total;
  };
  const before = ink();
  store.getState().lift('LS3');
  await waitFor(() => expect(ink()).toBeLessThan(before * 0.97));
});
