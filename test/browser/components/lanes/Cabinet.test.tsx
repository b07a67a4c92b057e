import { fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, test } from 'vitest';
import { WorkbenchContext } from '../../../../src/ui/index.ts';
import { DriverCard } from '../../../../src/ui/lanes/driver/DriverCard.tsx';
import { Lanes } from '../../../../src/ui/lanes/Lanes.tsx';
import { TeachPort } from '../../../../src/ui/lanes/TeachPort.tsx';
import { waysInOrder } from '../../../../src/ui/waysInOrder.ts';
import { demo, testStore } from '../plots/openWorkbench.tsx';

let store = testStore();
const enclosure = () => store.getState().project.enclosure;
const mountOf = (id: string) => enclosure().mounts.find((mount) => mount.partId === id)!;
const showLanes = () =>
  render(
    <div style={{ width: 1400 }}>
      <WorkbenchContext value={store}>
        <Lanes />
      </WorkbenchContext>
    </div>,
  );

beforeEach(() => {
  store = testStore();
});

test('arrow keys move a driver by 1 mm, with Shift by 10 mm, and keep it on the baffle', async () => {
  showLanes();
  const handle = screen.getByRole('button', { name: /^LS3, .*arrow keys move it/ });
  handle.focus();
  const { yM } = mountOf('LS3');
  await userEvent.keyboard('{ArrowDown}');
  expect(mountOf('LS3').yM).toBeCloseTo(yM - 0.001, 9);
  await userEvent.keyboard('{Shift>}{ArrowRight}{/Shift}');
  expect(mountOf('LS3').xM).toBeCloseTo(0.01, 9);
  for (let k = 0; k < 12; k++) fireEvent.keyDown(handle, { key: 'ArrowRight', shiftKey: true });
  fireEvent.keyUp(handle, { key: 'ArrowRight' });
  const radiusM = demo.drivers.find(({ id }) => id === 'tweeter')!.outerDiameterM / 2;
  expect(mountOf('LS3').xM).toBeCloseTo(enclosure().widthM / 2 - radiusM, 9);
});

test('a driver is dragged to scale, as one undo step', () => {
  showLanes();
  const handle = screen.getByRole('button', { name: /^LS1, .*arrow keys move it/ });
  const scale = handle.getBoundingClientRect().width / demo.drivers.find(({ id }) => id === 'woofer')!.outerDiameterM;
  const send = (type: string, clientX: number, clientY: number) =>
    fireEvent(handle, new PointerEvent(type, { bubbles: true, pointerId: 1, button: 0, clientX, clientY }));
  const { yM } = mountOf('LS1');
  send('pointerdown', 500, 500);
  send('pointermove', 500, 520);
  send('pointermove', 500, 500 + 0.1 * scale);
  send('pointerup', 500, 500 + 0.1 * scale);
  expect(mountOf('LS1').yM).toBeCloseTo(yM - 0.1, 3);
  store.getState().undo();
  expect(mountOf('LS1').yM).toBe(yM);
});

test('the port’s end sets its length; the tuning in words follows', async () => {
  showLanes();
  const tuned = () => store.getState().evaluation!.keyFigures.chambers.find(({ id }) => id === 'low')!.tuningHz!;
  const before = tuned();
  const { lengthM } = enclosure().ports[0]!;
  screen.getByRole('slider', { name: /^End of port P1/ }).focus();
  await userEvent.keyboard('{ArrowLeft}');
  expect(enclosure().ports[0]!.lengthM).toBeCloseTo(lengthM - 0.001, 9);
  await userEvent.keyboard('{Shift>}{ArrowLeft}{/Shift}');
  expect(tuned()).toBeGreaterThan(before);
  const words = [...document.querySelectorAll('.cabinet-words .cabinet-tuning')].map((text) => text.textContent);
  expect(words).toContain(`tuned to ${tuned().toPrecision(3)} Hz`);
});

test('the outside dimensions are edited on their lines', async () => {
  showLanes();
  screen.getByRole('spinbutton', { name: 'Outside depth' }).focus();
  await userEvent.keyboard('{ArrowUp}');
  expect(enclosure().depthM).toBeCloseTo(demo.enclosure.depthM + 0.001, 9);
});

test('the wished tuning’s length is used with one button', async () => {
  showLanes();
  await userEvent.click(screen.getByRole('button', { name: 'port P1' }));
  screen.getByRole('spinbutton', { name: 'Wished tuning of port P1' }).focus();
  await userEvent.keyboard('{ArrowUp}{ArrowUp}');
  const wished = Number(
    screen.getByRole('spinbutton', { name: 'Wished tuning of port P1' }).getAttribute('aria-valuenow'),
  );
  await userEvent.click(screen.getByRole('button', { name: 'use that length' }));
  const tuning = store.getState().evaluation!.keyFigures.chambers.find(({ id }) => id === 'low')!.tuningHz!;
  // The length is rounded to a millimetre: 0.2 % of it, half of that in frequency.
  expect(Math.abs(tuning / wished - 1)).toBeLessThan(0.004);
});

test('a chamber in use is not removed and says so; its ports can be, and it is sealed then', async () => {
  showLanes();
  await userEvent.click(screen.getByRole('button', { name: 'woofer chamber' }));
  await userEvent.click(screen.getByRole('button', { name: 'remove this chamber' }));
  expect(screen.getByRole('alert').textContent).toContain('LS1');
  await userEvent.click(screen.getByRole('button', { name: 'port P1' }));
  await userEvent.click(screen.getByRole('button', { name: 'remove this port' }));
  expect(enclosure().ports).toEqual([]);
  expect(store.getState().evaluation!.keyFigures.chambers.find(({ id }) => id === 'low')!.sealed).not.toBeNull();
  expect(within(screen.getByRole('article', { name: /^woofer/ })).getByText(/Qtc/)).toBeTruthy();
});

test('a way without a chamber says so on its card', () => {
  store.getState().dispatch({ type: 'set-mount', partId: 'LS2', changes: { chamberId: null } });
  showLanes();
  expect(within(screen.getByRole('article', { name: /^mid/ })).getByText(/No chamber behind it/)).toBeTruthy();
});

test('the data sheet shows entered and derived numbers, and both numbers of a contradiction', async () => {
  showLanes();
  await userEvent.click(screen.getByRole('button', { name: /^Edit the data sheet of 110 mm/ }));
  const sheet = within(screen.getByRole('region', { name: /^Data sheet of 110 mm/ }));
  const qts = sheet.getByRole('spinbutton', { name: /^Qts, / });
  expect(qts.textContent).toContain('derived');
  qts.focus();
  await userEvent.keyboard('0.6{Enter}');
  expect(store.getState().project.drivers.find(({ id }) => id === 'mid')!.entered.qts).toBe(0.6);
  const said = sheet.getByRole('listitem').textContent ?? '';
  expect(said).toContain('Qts');
  expect(said).toContain('0.6');
  expect(said).toContain('0.376');
  sheet.getByRole('spinbutton', { name: /^Qts, / }).focus();
  await userEvent.keyboard('{Delete}{Enter}');
  expect(store.getState().project.drivers.find(({ id }) => id === 'mid')!.entered.qts).toBeUndefined();
});

test('limits show how much of each is used, at one drive', () => {
  const way = waysInOrder(demo).find(({ speakerId }) => speakerId === 'LS1')!;
  render(
    <WorkbenchContext value={store}>
      <DriverCard way={way} spanM={0.3} editing={false} edit={() => undefined} />
    </WorkbenchContext>,
  );
  const travel = store.getState().evaluation!.keyFigures.excursions.find(({ partId }) => partId === 'LS1')!;
  const words = `${(travel.peakM * 1e3).toFixed(1)} of ${(travel.limitM! * 1e3).toFixed(1)} mm`;
  expect(screen.getByRole('article').textContent).toContain(words);
  expect(screen.getByText('port air')).toBeTruthy();
});

test('a way is added and removed again', async () => {
  showLanes();
  await userEvent.click(screen.getByRole('button', { name: 'add a way' }));
  await userEvent.click(
    within(screen.getByRole('region', { name: 'Add a way' })).getByRole('button', { name: 'woofer' }),
  );
  expect(await screen.findAllByRole('article')).toHaveLength(4);
  await userEvent.click(screen.getByRole('button', { name: /^Edit the data sheet of 170 mm/ }));
  await userEvent.click(screen.getByRole('button', { name: 'remove this way' }));
  expect(screen.getAllByRole('article')).toHaveLength(3);
});

test('the lesson’s handle changes length and tuning, and says which way', async () => {
  render(
    <div style={{ width: 1200 }}>
      <WorkbenchContext value={store}>
        <TeachPort />
      </WorkbenchContext>
    </div>,
  );
  const handle = screen.getByRole('slider', { name: 'Port length' });
  handle.focus();
  await userEvent.keyboard('{Shift>}{ArrowLeft}{/Shift}');
  expect(enclosure().ports[0]!.lengthM).toBeCloseTo(demo.enclosure.ports[0]!.lengthM - 0.01, 9);
  expect(screen.getByText(/a shorter port tunes higher/)).toBeTruthy();
  await userEvent.keyboard('{Home}');
  expect(enclosure().ports[0]!.lengthM).toBeCloseTo(demo.enclosure.panelM, 9);
});
