import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { problem } from '../../../../src/core/messages/problem.ts';
import { ErrorBoundary } from '../../../../src/ui/frame/ErrorBoundary.tsx';
import { FindingsStrip, Header, KeyStrip, Notices } from '../../../../src/ui/frame/index.ts';
import { NO_SERVICES, PageServicesContext } from '../../../../src/ui/index.ts';
import { demo, show, testStore } from '../plots/openWorkbench.tsx';

const fragile = { broken: true };
function Fragile() {
  if (fragile.broken) throw new Error('no such curve');
  return <p>whole again</p>;
}

const wide = () => page.viewport(1440, 900);

test('the name is edited where it stands; Escape puts it back', async () => {
  await wide();
  const store = testStore();
  show(store, <Header />);
  const name = screen.getByLabelText('Name of the project');
  await userEvent.clear(name);
  await userEvent.type(name, 'Hall two-way{Enter}');
  expect(store.getState().project.name).toBe('Hall two-way');
  await userEvent.clear(name);
  await userEvent.type(name, 'never{Escape}');
  await userEvent.tab();
  expect(store.getState().project.name).toBe('Hall two-way');
});

test('undo says what it takes back', async () => {
  await wide();
  const store = testStore();
  show(store, <Header />);
  expect(screen.getByRole('button', { name: 'Undo' })).toHaveProperty('disabled', true);
  store.getState().dispatch({ type: 'set-drive', driveV: 5 });
  const undo = await screen.findByRole('button', { name: /^Undo drive 2.83 → 5/ });
  await userEvent.click(undo);
  expect(store.getState().project.chain.driveV).toBe(2.83);
  await userEvent.click(screen.getByRole('button', { name: 'Redo' }));
  expect(store.getState().project.chain.driveV).toBe(5);
});

test('keep, change, compare: the table says what differs, and the way back works', async () => {
  await wide();
  const store = testStore();
  show(store, <Header />);
  await userEvent.click(screen.getByRole('button', { name: 'Keep this' }));
  store.getState().dispatch({ type: 'set-part', partId: 'C1', changes: { farad: 56e-6 } });
  await userEvent.click(screen.getByRole('button', { name: 'Compare 1 kept' }));
  const row = await screen.findByRole('row', { name: /^C1/ });
  expect(row.textContent).toContain('56 µF');
  const { ghosts, evaluation } = store.getState();
  const results = within(screen.getByRole('region', { name: /^Results: / }));
  const ripples = [ghosts[0]?.evaluation, evaluation].map((one) => `±${one?.keyFigures.rippleDb?.toFixed(1)} dB`);
  expect(ripples[0]).not.toBe(ripples[1]);
  const shown = within(results.getByRole('row', { name: /^200 Hz to 10 kHz/ })).getAllByRole('cell');
  expect(shown.map((cell) => cell.textContent)).toEqual(ripples);
  expect(results.getAllByRole('rowheader').map((head) => head.textContent)).toEqual([
    'mean level, 200 Hz to 2 kHz',
    '−3 dB re mean, 200 Hz to 2 kHz',
    '200 Hz to 10 kHz, half of greatest minus least',
    'least impedance',
    'greatest excursion, one way, peak',
    'port air, peak',
  ]);
  const before = demo.network.parts.find((part) => part.id === 'C1');
  await userEvent.click(screen.getByRole('button', { name: 'Go back to it' }));
  expect(store.getState().project.network.parts.find((part) => part.id === 'C1')).toEqual(before);
});

test('a state is kept under a name of the person’s own', async () => {
  await wide();
  const store = testStore();
  show(
    store,
    <>
      <Header />
      <Notices />
    </>,
  );
  await userEvent.click(screen.getByRole('button', { name: 'Compare' }));
  const form = within(screen.getByRole('form', { name: 'Keep under a name' }));
  const name = form.getByLabelText('Keep the present state as') as HTMLInputElement;
  await userEvent.type(name, ' bright tweeter {Enter}');
  expect(store.getState().project.snapshots.map((state) => state.name)).toEqual(['bright tweeter']);
  expect(name.value).toBe('');
  await userEvent.type(name, 'bright tweeter{Enter}');
  await userEvent.type(name, 'one too many{Enter}');
  expect(store.getState().project.snapshots.map((state) => state.name)).toEqual(['bright tweeter', 'bright tweeter 2']);
  // The refusal stands at the field alone, and what was typed stays.
  expect(form.getByRole('alert').textContent).toContain('Two states are kept already');
  expect(store.getState().refusal).toEqual([]);
  expect(name.value).toBe('one too many');
});

test('undo that leaves an opened project says so and leads back', async () => {
  await wide();
  const store = testStore();
  show(store, <Notices />);
  store.getState().open({ ...demo, name: 'Other' });
  store.getState().undo();
  const line = await screen.findByTestId('crossing');
  expect(line.textContent).toContain(`the opening of “Other”: this is “${demo.name}” again`);
  await userEvent.click(within(line).getByRole('button', { name: 'Return to “Other”' }));
  expect(store.getState().project.name).toBe('Other');
  expect(screen.getByTestId('crossing').textContent).toContain('Redo opened “Other” again');
  await userEvent.click(screen.getByRole('button', { name: 'Dismiss' }));
  expect(screen.queryByTestId('crossing')).toBeNull();
});

test('a third state is refused with a sentence, which can be dismissed', async () => {
  await wide();
  const store = testStore();
  show(
    store,
    <>
      <Header />
      <Notices />
    </>,
  );
  for (let time = 0; time < 3; time++) await userEvent.click(screen.getByRole('button', { name: 'Keep this' }));
  expect(store.getState().project.snapshots).toHaveLength(2);
  const line = await screen.findByTestId('refusal');
  expect(line.textContent?.length).toBeGreaterThan(20);
  await userEvent.click(within(line).getByRole('button', { name: 'Dismiss' }));
  expect(store.getState().refusal).toEqual([]);
});

test('what cannot be computed says why, names the place, and keeps the last good picture', async () => {
  const store = testStore();
  show(store, <Notices />);
  const before = store.getState().evaluation;
  store.setState({
    problems: [
      problem('speaker.no-volume-left', { kind: 'chamber', id: 'mid-chamber' }, { grossM3: 0.002, takenM3: 0.003 }),
    ],
  });
  const line = await screen.findByTestId('problems');
  expect(line.textContent).toContain('the last good picture stays');
  await userEvent.click(within(line).getByRole('button', { name: /show/ }));
  expect(store.getState().selection).toEqual({ kind: 'chamber', id: 'mid-chamber' });
  expect(store.getState().evaluation).toBe(before);
});

test('a floating node leads to a part that ends there', async () => {
  const store = testStore();
  show(store, <Notices />);
  const loose = {
    id: 'R9',
    kind: 'resistor',
    nodes: ['nowhere', 'lost'],
    ohm: 1,
    ratedPowerW: null,
    note: '',
  } as const;
  store.getState().open({ ...demo, network: { parts: [...demo.network.parts, loose] } });
  const line = await screen.findByTestId('problems');
  expect(line.textContent).toContain('Node nowhere at R9 has no path');
  await userEvent.click(within(line).getByRole('button', { name: 'show R9' }));
  expect(store.getState().selection).toEqual({ kind: 'part', id: 'R9' });
});

test('places are named as on the screen, and led to by id', async () => {
  const store = testStore();
  show(
    store,
    <>
      <Notices />
      <FindingsStrip />
    </>,
  );
  const { chambers } = demo.enclosure;
  store.getState().dispatch({ type: 'set-chamber', id: chambers[0]!.id, changes: { bracesM3: 0.2 } });
  const line = await screen.findByTestId('problems');
  expect(line.textContent).toContain(`Chamber “${chambers[0]!.name}” has no air left`);
  await userEvent.click(within(line).getByRole('button', { name: `show ${chambers[0]!.name}` }));
  expect(store.getState().selection).toEqual({ kind: 'chamber', id: chambers[0]!.id });
});

test('what cannot be computed is not said to be without flaw', async () => {
  const store = testStore();
  show(
    store,
    <>
      <Notices />
      <FindingsStrip />
    </>,
  );
  const none = 'No flaw found at this drive and listening place.';
  store.setState({ evaluation: { ...store.getState().evaluation!, findings: [] } });
  await screen.findByText(none);
  store.setState({ problems: [problem('speaker.no-speaker', { kind: 'document' })] });
  await screen.findByTestId('problems');
  expect(screen.queryByText(none)).toBeNull();
  store.setState({ problems: [] });
  await screen.findByText(none);
});

test('findings: severity in words, a sentence, and a link that selects the place', async () => {
  await wide();
  const store = testStore();
  show(store, <FindingsStrip />);
  store.getState().dispatch({ type: 'set-drive', driveV: 20 });
  const strip = screen.getByTestId('findings');
  await waitFor(() => expect(within(strip).getAllByText('Danger').length).toBeGreaterThan(0));
  const { findings = [] } = store.getState().evaluation ?? {};
  await userEvent.click(within(strip).getAllByRole('button', { name: /^Show / })[0] as HTMLElement);
  expect(store.getState().selection?.id).toBe(findings[0]?.place.id);
  await userEvent.click(within(strip).getByRole('button', { name: /What to do/ }));
  expect(within(strip).getAllByRole('listitem')).toHaveLength(findings.length);
});

test('key figures follow the design; one that passes its limit says so in words', async () => {
  await wide();
  const store = testStore();
  show(store, <KeyStrip />);
  const figures = store.getState().evaluation?.keyFigures;
  expect(screen.getByTestId('key-sensitivity').textContent).toBe(`${figures?.sensitivityDbSpl?.toFixed(1)} dB`);
  store.getState().dispatch({ type: 'set-drive', driveV: 20 });
  await waitFor(() => expect(screen.getByTestId('key-travel').textContent).toContain('passes its limit'));
});

test('“why?” opens a note that follows the design', async () => {
  await wide();
  const store = testStore();
  show(store, <KeyStrip />);
  const item = screen.getByTestId(/^key-tuning/).closest('.key-item') as HTMLElement;
  await userEvent.click(within(item).getByRole('button', { name: /^why\?/i }));
  const note = (await screen.findAllByTestId('why'))[0] as HTMLElement;
  expect(note.textContent).toContain('fB = (c / 2π)');
  const before = note.textContent;
  const port = demo.enclosure.ports[0];
  store.getState().dispatch({ type: 'set-port', id: port?.id ?? '', changes: { lengthM: 0.15 } });
  await waitFor(() => expect(note.textContent).not.toBe(before));
});

test('new: a starting point is opened, and the former project is one undo away', async () => {
  await wide();
  const store = testStore();
  const point = {
    id: 'x',
    title: 'Plain box',
    about: 'One driver.',
    load: async () => ({ ...demo, name: 'Plain box' }),
  };
  const services = { ...NO_SERVICES, startingPoints: [point] };
  show(
    store,
    <PageServicesContext value={services}>
      <Header />
    </PageServicesContext>,
  );
  await userEvent.click(screen.getByRole('button', { name: 'New' }));
  await userEvent.click(await screen.findByRole('button', { name: /Plain box/ }));
  await waitFor(() => expect(store.getState().project.name).toBe('Plain box'));
  store.getState().undo();
  expect(store.getState().project.name).toBe(demo.name);
});

test('a panel within a panel closes alone; what is begun in it closes both', async () => {
  await page.viewport(390, 844);
  const store = testStore();
  const point = {
    id: 'x',
    title: 'Plain box',
    about: 'One driver.',
    load: async () => ({ ...demo, name: 'Plain box' }),
  };
  show(
    store,
    <PageServicesContext value={{ ...NO_SERVICES, startingPoints: [point] }}>
      <Header />
    </PageServicesContext>,
  );
  await userEvent.click(screen.getByRole('button', { name: 'More' }));
  await userEvent.click(await screen.findByRole('button', { name: 'New' }));
  await screen.findByRole('button', { name: /Plain box/ });
  document.querySelector<HTMLElement>('.popover .popover:popover-open')?.hidePopover();
  await waitFor(() => expect(screen.queryByRole('button', { name: /Plain box/ })).toBeNull());
  await userEvent.click(screen.getByRole('button', { name: 'New' }));
  await userEvent.click(await screen.findByRole('button', { name: /Plain box/ }));
  await waitFor(() => expect(store.getState().project.name).toBe('Plain box'));
  await waitFor(() => expect(document.querySelectorAll(':popover-open')).toHaveLength(0));
});

test('measured columns ask what they are and then lie over the prediction', async () => {
  await wide();
  const store = testStore();
  show(store, <Notices />);
  const lines = Array.from({ length: 40 }, (_, index) => `${20 * 1.19 ** index};${85 + (index % 3)}`);
  store.getState().openText(`Hz;dB\n${lines.join('\n')}`, 'channel-a.txt');
  const panel = await screen.findByTestId('curve-panel', {}, { timeout: 3000 });
  expect(panel.textContent).toContain('40 points');
  expect(screen.getByTestId('curve-owner')).toHaveProperty('value', 'left');
  await userEvent.click(within(panel).getByRole('button', { name: 'Take it in' }));
  expect(store.getState().project.curves[0]?.belongsTo).toEqual({ kind: 'speaker', channel: 'left' });
  await waitFor(() => expect(screen.queryByTestId('curve-panel')).toBeNull());
});

test('a file name says whose the curve is and from how far; the person may say otherwise', async () => {
  await wide();
  const store = testStore();
  show(store, <Notices />);
  const lines = Array.from({ length: 40 }, (_, index) => `${20 * 1.19 ** index};${85 + (index % 3)}`);
  store.getState().openText(`Hz;dB\n${lines.join('\n')}`, 'right_40cm.txt');
  const panel = await screen.findByTestId('curve-panel', {}, { timeout: 3000 });
  expect(screen.getByTestId('curve-owner')).toHaveProperty('value', 'right');
  expect(within(panel).getByLabelText(/measured at/)).toHaveProperty('value', '0.4');
  const mid = demo.drivers.find(({ role }) => role === 'mid');
  await userEvent.selectOptions(screen.getByTestId('curve-owner'), `driver ${mid?.id}`);
  await userEvent.click(within(panel).getByRole('button', { name: 'Take it in' }));
  const [curve] = store.getState().project.curves;
  expect(curve?.belongsTo).toEqual({ kind: 'driver', driverId: mid?.id });
  expect(curve?.taken.distanceM).toBe(0.4);
});

test('a panel that throws is kept to itself and can be tried again', async () => {
  const quiet = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  show(
    testStore(),
    <>
      <ErrorBoundary panel="the plot">
        <Fragile />
      </ErrorBoundary>
      <p>the rest</p>
    </>,
  );
  expect(screen.getByRole('alert').textContent).toContain('no such curve');
  expect(screen.getByText('the rest')).toBeDefined();
  fragile.broken = false;
  await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
  expect(screen.getByText('whole again')).toBeDefined();
  quiet.mockRestore();
});
