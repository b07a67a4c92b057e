import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, expect, test, vi } from 'vitest';
import { type DriverParameters, driverFigures } from '../../../../../src/core/acoustics/index.ts';
import { alignmentMap, mapAxes, publishedPoints } from '../../../../../src/core/design/alignmentMap/index.ts';
import { AlignmentMapView, type MapBox } from '../../../../../src/ui/plots/map/index.ts';
import '../../../../../src/ui/theme.css';
import '../../../../../src/ui/frame/frame.css';

afterEach(cleanup);

const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 };
const driver: DriverParameters = {
  reOhm: 5.6,
  leH: 0,
  semiInductance: null,
  blTm: 10.2,
  mmsKg: 0.03,
  cmsMPerN: 7e-4,
  rmsKgPerS: 1.5,
  sdM2: 0.022,
};
const numbers = driverFigures(driver, air);
const start: MapBox = { volumeM3: 0.04, tuningHz: 38 };
const made = alignmentMap({
  driver,
  alike: 1,
  losses: { leak: { q: 7, atHz: null }, absorption: null, port: null },
  air,
  driveV: 10,
  seriesOhm: 0,
  port: { shape: { kind: 'round', diameterM: 0.075 }, innerEnd: 'free', outerEnd: 'flanged', count: 1 },
  ...mapAxes(numbers, start, 60),
});
if (!made.ok) throw new Error('The map of the test cannot be made.');
const map = made.value;
const points = publishedPoints({ driver: numbers, ql: 7, wishedQtcs: [1] });
const qb3 = points.points.find(({ family }) => family === 'QB3')!;

function Moved({ width, onMove, onCommit }: { width: number; onMove: typeof move; onCommit: typeof commit }) {
  const [present, setPresent] = useState<MapBox | null>(start);
  return (
    <div style={{ width, padding: 12, background: 'var(--card)' }}>
      <AlignmentMapView
        map={map}
        points={points}
        present={present}
        units="metric"
        onMove={(volumeM3, tuningHz) => {
          onMove(volumeM3, tuningHz);
          setPresent({ volumeM3, tuningHz });
        }}
        onCommit={onCommit}
      />
    </div>
  );
}
const move = vi.fn((_volumeM3: number, _tuningHz: number) => undefined);
const commit = vi.fn((_volumeM3: number, _tuningHz: number) => undefined);
const show = (width = 720) => {
  move.mockClear();
  commit.mockClear();
  return render(<Moved width={width} onMove={move} onCommit={commit} />);
};
const dot = () => screen.getByRole('slider', { name: /Box/ });
const middleOf = (element: Element) => {
  const { left, top, width, height } = element.getBoundingClientRect();
  return { x: left + width / 2, y: top + height / 2 };
};
const readout = () => screen.getByTestId('map-readout').textContent ?? '';

test('one family of contours at a time, each with its values written on it', async () => {
  show();
  const paths = () => [...document.querySelectorAll('.map-lines path')];
  expect(document.querySelector('.map-lines-cut-off')).not.toBeNull();
  expect(paths().length).toBeGreaterThan(4);
  for (const [name, kind, unit] of [
    ['ripple', 'ripple', 'dB'],
    ['excursion', 'excursion', 'mm'],
    ['port length', 'port-length', 'm?m'],
    ['cut-off', 'cut-off', 'Hz'],
  ] as const) {
    await userEvent.click(screen.getByRole('button', { name }));
    expect(document.querySelectorAll('.map-lines')).toHaveLength(1);
    const texts = [...document.querySelectorAll(`.map-lines-${kind} text`)].map((text) => text.textContent ?? '');
    expect(texts.length).toBeGreaterThan(1);
    for (const text of texts) expect(text).toMatch(new RegExp(`^[\\d.]+ ${unit}$`));
    expect(screen.getByRole('button', { name }).getAttribute('aria-pressed')).toBe('true');
  }
});

test('a contour runs through the boxes that have its cut-off', () => {
  show();
  const box = document.querySelector('.map-body')?.getBoundingClientRect();
  const path = document.querySelector<SVGPathElement>('.map-lines path[data-level="40"]');
  if (!path || !box) throw new Error('There is no contour of 40 Hz.');
  const middle = path.getPointAtLength(path.getTotalLength() / 2);
  fireEvent.pointerMove(document.querySelector('.map-body svg')!, {
    clientX: box.left + middle.x,
    clientY: box.top + middle.y,
  });
  expect(readout()).toMatch(/^Here: .*cut-off (39\.[89]|40(\.[01])?) Hz/);
});

test('the present box reads its figures, and arrow keys move it by one or ten per cent', async () => {
  show();
  expect(readout()).toMatch(/^Present box: 40 L tuned to 38 Hz/);
  expect(dot().getAttribute('aria-valuetext')).toMatch(/^40 L tuned to 38 Hz: cut-off \d/);
  dot().focus();
  await userEvent.keyboard('{ArrowRight}');
  expect(move.mock.lastCall![0]).toBeCloseTo(0.0404, 6);
  expect(move.mock.lastCall![1]).toBeCloseTo(38, 9);
  expect(commit.mock.lastCall).toEqual(move.mock.lastCall);
  await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}');
  expect(move.mock.lastCall![1]).toBeCloseTo(38 / 1.1, 9);
  expect(commit).toHaveBeenCalledTimes(2);
  expect(readout()).toMatch(/40\.4 L tuned to 34\.5 Hz/);
});

test('a drag moves the box with every step and commits once; Escape puts it back', () => {
  show();
  const { x, y } = middleOf(dot());
  const id = { pointerId: 1, button: 0 };
  dot().setPointerCapture = () => undefined;
  fireEvent.pointerDown(dot(), { ...id, clientX: x, clientY: y });
  fireEvent.pointerMove(dot(), { ...id, clientX: x + 40, clientY: y - 30 });
  fireEvent.pointerMove(dot(), { ...id, clientX: x + 60, clientY: y - 30 });
  expect(commit).not.toHaveBeenCalled();
  fireEvent.pointerUp(dot(), { ...id, clientX: x + 60, clientY: y - 30 });
  expect(move).toHaveBeenCalledTimes(2);
  expect(commit).toHaveBeenCalledTimes(1);
  const [volumeM3, tuningHz] = commit.mock.lastCall!;
  expect(volumeM3).toBeGreaterThan(0.05);
  expect(tuningHz).toBeGreaterThan(42);
  const moved = middleOf(dot());
  expect(Math.abs(moved.x - (x + 60))).toBeLessThan(1.5);

  fireEvent.pointerDown(dot(), { ...id, clientX: moved.x, clientY: moved.y });
  fireEvent.pointerMove(dot(), { ...id, clientX: 5000, clientY: moved.y });
  // Far outside it stays on the map's edge.
  expect(move.mock.lastCall![0]).toBeCloseTo(map.volumesM3.at(-1)!, 9);
  fireEvent.keyDown(dot(), { key: 'Escape' });
  expect(commit.mock.lastCall).toEqual([volumeM3, tuningHz]);
  expect(Math.abs(middleOf(dot()).x - moved.x)).toBeLessThan(0.5);
});

test('a published box is taken from the map or from the table; families without one say why', async () => {
  show();
  await userEvent.click(screen.getByRole('button', { name: /Take .*QB3/ }));
  expect(commit.mock.lastCall).toEqual([qb3.volumeM3, qb3.tuningHz]);
  await userEvent.click(screen.getByText('Published boxes for this driver'));
  const table = screen.getByRole('table');
  expect(within(table).getAllByRole('row')).toHaveLength(points.points.length + 1);
  await userEvent.click(within(table).getByRole('button', { name: 'SC4' }));
  const sc4 = points.points.find(({ family }) => family === 'SC4')!;
  expect(commit.mock.lastCall).toEqual([sc4.volumeM3, sc4.tuningHz]);
  expect(within(table).queryByRole('button', { name: 'B2' })).toBeNull();
  expect(screen.getByText(/^C4 is for drivers whose Qts is above 0\.405/)).toBeDefined();
});

test('nothing is smaller than 11 px, and labels stay inside, also on a narrow screen', () => {
  show(340);
  const body = document.querySelector('.map-body')!.getBoundingClientRect();
  for (const text of document.querySelectorAll('.map-body text')) {
    expect(Number.parseFloat(getComputedStyle(text).fontSize)).toBeGreaterThanOrEqual(11);
    const { left, right } = text.getBoundingClientRect();
    expect(left).toBeGreaterThanOrEqual(body.left - 1);
    expect(right).toBeLessThanOrEqual(body.right + 1);
  }
});
