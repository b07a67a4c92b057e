import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, test } from 'vitest';
import { WorkbenchContext } from '../../../../src/ui/index.ts';
import { Lanes } from '../../../../src/ui/lanes/Lanes.tsx';
import { demo, testStore } from '../plots/openWorkbench.tsx';

let store = testStore();
const amplifier = () => store.getState().project.chain.amplifiers[0]!;
const woofer = () => store.getState().project.drivers.find(({ role }) => role === 'woofer')!;
const show = () =>
  render(
    <div style={{ width: 1400 }}>
      <WorkbenchContext value={store}>
        <Lanes />
      </WorkbenchContext>
    </div>,
  );
const openAmplifier = async () => {
  within(screen.getByRole('region', { name: 'Crossover circuit' }))
    .getByRole('button', { name: /^V1, / })
    .focus();
  await userEvent.keyboard('{Enter}');
  return within(screen.getByRole('dialog'));
};

beforeEach(() => {
  store = testStore();
});

test('the active high-pass is off at first, offers only filters that exist, and starts at 80 Hz', async () => {
  show();
  const sheet = await openAmplifier();
  const choice = sheet.getByRole('combobox', { name: 'Active high-pass before V1' }) as HTMLSelectElement;
  expect(choice.value).toBe('none');
  const offered = [...choice.options].map(({ textContent }) => textContent);
  expect(offered).toHaveLength(7);
  expect(offered.filter((words) => words?.startsWith('Linkwitz-Riley'))).toEqual([
    'Linkwitz-Riley 2nd, 12 dB/oct',
    'Linkwitz-Riley 4th, 24 dB/oct',
  ]);
  for (const { value } of [...choice.options].slice(1)) {
    await userEvent.selectOptions(choice, value);
    expect(store.getState().problems).toEqual([]);
  }
  expect(amplifier().highPass).toEqual({ shape: 'linkwitz-riley', order: 4, cornerHz: 80 });
  expect(sheet.getByText(/80 to 100 Hz/).textContent).toContain('common practice, no source');
  const corner = sheet.getByRole('spinbutton', { name: 'Corner of the active high-pass before V1' });
  corner.focus();
  await userEvent.keyboard('{ArrowUp}');
  expect(amplifier().highPass?.cornerHz).toBe(81);
  await userEvent.selectOptions(choice, 'none');
  expect(amplifier().highPass).toBeNull();
});

test('what the amplifier gives at most is stated and left out again; the bar comes and goes on the woofer’s card', async () => {
  show();
  const sheet = await openAmplifier();
  const volts = sheet.getByRole('spinbutton', { name: 'greatest peak voltage of V1' });
  expect(volts.textContent).toBe('not stated');
  volts.focus();
  await userEvent.keyboard('40{Enter}');
  expect(amplifier().peakVoltageV).toBe(40);
  const card = screen.getByRole('article', { name: /^woofer/ });
  expect(within(card).getByText('V1 voltage')).toBeTruthy();
  expect(within(screen.getByRole('article', { name: /^mid/ })).queryByText('V1 voltage')).toBeNull();
  const amps = sheet.getByRole('spinbutton', { name: 'greatest peak current of V1' });
  amps.focus();
  await userEvent.keyboard('8 A{Enter}');
  expect(amplifier().peakCurrentA).toBe(8);
  volts.focus();
  await userEvent.keyboard('{Delete}{Enter}');
  expect(amplifier().peakVoltageV).toBeNull();
  expect(within(card).queryByText('V1 voltage')).toBeNull();
});

test('a coil’s heat is as usual until one value states them all, and goes back to usual', async () => {
  show();
  await userEvent.click(screen.getByRole('button', { name: /^Edit the data sheet of 220 mm woofer/ }));
  const sheet = within(screen.getByRole('region', { name: /^Data sheet/ }));
  const limit = sheet.getByRole('spinbutton', { name: /^hottest the coil may get/ });
  expect(limit.textContent).toBe('180 °C usual');
  expect(woofer().heat).toBeNull();
  limit.focus();
  await userEvent.keyboard('150{Enter}');
  expect(woofer().heat).toMatchObject({ wire: 'copper', limitC: 150 });
  expect(woofer().heat?.coilKPerW).toBeCloseTo(Math.sqrt(2.5 * 5), 9);
  expect(within(screen.getByRole('article', { name: /^woofer/ })).getByText(/of 150 °C/)).toBeTruthy();
  await userEvent.selectOptions(sheet.getByRole('combobox', { name: /^Wire of the coil/ }), 'aluminium');
  expect(woofer().heat).toMatchObject({ wire: 'aluminium', limitC: 150 });
  await userEvent.click(sheet.getByRole('button', { name: 'usual for its size' }));
  expect(woofer().heat).toBeNull();
  for (let k = 0; k < 3; k++) store.getState().undo();
  expect(store.getState().project).toBe(demo);
});

test('a bar’s column is as wide whatever its amounts say, and its row as high', async () => {
  show();
  const rows = () =>
    [...document.querySelectorAll('.driver-card-limits .limit-bar')].map((bar) => {
      const track = bar.querySelector('.limit-bar-track')!.getBoundingClientRect();
      return [track.width, bar.getBoundingClientRect().height];
    });
  const before = rows();
  expect(before.length).toBeGreaterThan(5);
  store.getState().dispatch({ type: 'set-drive', driveV: 200 });
  await new Promise((done) => requestAnimationFrame(done));
  expect(screen.getAllByText(/⚠/).length).toBeGreaterThan(0);
  expect(rows()).toEqual(before);
});
