import { expect, test } from 'vitest';
import type { Curve, Project } from '../../../../src/core/document/schema.ts';
import { readAt } from '../../../../src/plot/index.ts';
import type { Picture } from '../../../../src/ui/plots/picture.ts';
import {
  delayView,
  loadView,
  phaseView,
  portAirView,
  responseView,
  travelView,
} from '../../../../src/ui/plots/views/index.ts';
import { demo, testStore } from './openWorkbench.tsx';

const curveOf = (picture: Picture | null, id: string) => {
  const curve = picture?.curves.find((candidate) => candidate.id === id);
  if (!curve) throw new Error(`The picture has no curve ${id}.`);
  return curve;
};
const greatest = (values: ArrayLike<number>, from: ArrayLike<number>) =>
  Math.max(...Array.from(values).filter((_, index) => (from[index] ?? 0) >= 20));

test('response: cone and port apart for the vented way, one curve for each other way, the sum on top', () => {
  const picture = responseView.picture(testStore().getState());
  const names = picture?.curves.map((curve) => curve.name);
  expect(names).toEqual(['port', 'woofer cone', 'mid', 'tweeter', 'sum']);
  expect(picture?.left.title).toBe('level at 2.5 m for 2.83 V, on its own baffle, dB re 20 µPa');
  expect((picture?.left.range[1] ?? 0) - (picture?.left.range[0] ?? 0)).toBe(50);
});

test('response: a measured channel is moved to the drive and distance that are shown', () => {
  const store = testStore();
  const curve: Curve = {
    id: 'left-1',
    name: 'left',
    belongsTo: { kind: 'speaker', channel: 'left' },
    quantity: 'response',
    frequenciesHz: [100, 10000],
    magnitudes: [88, 90],
    phasesDeg: null,
    taken: { baffle: 'own', voltageV: 2.83, distanceM: 1 },
    sourceName: 'left.txt',
  };
  expect(store.getState().dispatch({ type: 'add-curve', curve })).toEqual([]);
  // From 1 m to 2.5 m at the same drive: 20 lg 0.4 = -7.9588 dB.
  const shown = curveOf(responseView.picture(store.getState()), 'curve:left-1');
  expect(shown.values[0]).toBeCloseTo(88 - 7.9588, 4);
  expect(shown.name).toBe('left, measured, moved −7.96 dB');
});

test('impedance: magnitude in ohm, phase within a right angle (a passive load), the rated minimum as a limit', () => {
  const state = testStore().getState();
  const picture = loadView.picture(state);
  const { leastImpedance } = state.evaluation?.keyFigures ?? {};
  const size = curveOf(picture, 'ohm:V1');
  expect(Math.min(...Array.from(size.values))).toBeCloseTo(leastImpedance?.ohm ?? 0, 6);
  for (const degrees of Array.from(curveOf(picture, 'phase:V1').values))
    expect(Math.abs(degrees)).toBeLessThanOrEqual(90);
  expect(picture?.lines.map((line) => [line.value, line.kind])).toEqual([[4, 'limit']]);
});

test('travel and port air: peaks, in millimetres and metres per second, as the key figures have them', () => {
  const state = testStore().getState();
  const figures = state.evaluation?.keyFigures;
  const travel = travelView.picture(state);
  for (const { partId, peakM } of figures?.excursions ?? []) {
    const curve = curveOf(travel, `cone:${partId}`);
    expect(greatest(curve.values, curve.frequenciesHz)).toBeCloseTo(peakM * 1000, 9);
  }
  const air = portAirView.picture(state);
  for (const { id, peakMPerS } of figures?.portSpeeds ?? []) {
    const curve = curveOf(air, `port:${id}`);
    expect(greatest(curve.values, curve.frequenciesHz)).toBeCloseTo(peakMPerS, 9);
  }
});

test('travel: a limit that lies far above is told in words instead of pressing the curves flat', () => {
  const store = testStore();
  store.getState().dispatch({ type: 'set-drive', driveV: 0.05 });
  const picture = travelView.picture(store.getState());
  expect(picture?.lines).toEqual([]);
  expect(picture?.left.title).toContain('woofer limit 6 mm');
  store.getState().dispatch({ type: 'set-drive', driveV: 5 });
  expect(travelView.picture(store.getState())?.lines.map((line) => line.value)).toContain(6);
});

test('arrival: the group delay is minus the slope of the phase that is shown', () => {
  const state = testStore().getState();
  const phase = curveOf(phaseView.picture(state), 'sum');
  const delay = curveOf(delayView.picture(state), 'sum');
  for (const hz of [60, 300, 1200, 9000]) {
    const step = hz * 0.01;
    const from = readAt(phase.frequenciesHz, phase.values, hz - step, 360) ?? 0;
    const to = readAt(phase.frequenciesHz, phase.values, hz + step, 360) ?? 0;
    const turn = to - from - 360 * Math.round((to - from) / 360);
    const slopeMs = (-turn / 360 / (2 * step)) * 1000;
    // Both are slopes over about 2 % of the frequency; a tenth covers the bend between them.
    expect(Math.abs((readAt(delay.frequenciesHz, delay.values, hz) ?? 0) - slopeMs)).toBeLessThan(
      0.1 * Math.abs(slopeMs) + 0.02,
    );
  }
});

test('a kept state stays as a ghost and says the drive that it was kept at', () => {
  const store = testStore();
  store.getState().dispatch({ type: 'keep-state', name: 'as delivered' });
  store.getState().dispatch({ type: 'set-drive', driveV: 5.66 });
  const picture = responseView.picture(store.getState());
  const ghost = picture?.curves.find((curve) => curve.id.startsWith('kept:'));
  expect(ghost?.name).toBe('kept: as delivered (2.83 V)');
  const sum = curveOf(picture, 'sum');
  expect((sum.values[500] ?? 0) - (ghost?.values[500] ?? 0)).toBeCloseTo(6.0206, 3);
});

test('a ghost bears its name only where it parts from the present curves by more than 0.05 dB', () => {
  const store = testStore();
  store.getState().dispatch({ type: 'keep-state', name: 'before' });
  const ghostIn = (view: typeof responseView) =>
    view.picture(store.getState())?.curves.filter((curve) => curve.id.startsWith('kept:')) ?? [];
  const views = [responseView, loadView, travelView, portAirView, phaseView, delayView];
  for (const view of views) expect(ghostIn(view).map(({ named }) => named)).not.toContain(true);
  // 0.5 % more drive: 20 lg 1.005 = 0.043 dB; 1 %: 0.086 dB.
  store.getState().dispatch({ type: 'set-drive', driveV: 2.83 * 1.005 });
  expect(ghostIn(responseView).some(({ named }) => named)).toBe(false);
  expect(ghostIn(travelView).some(({ named }) => named)).toBe(false);
  store.getState().dispatch({ type: 'set-drive', driveV: 2.83 * 1.01 });
  expect(ghostIn(responseView).some(({ named }) => named)).toBe(true);
  expect(ghostIn(travelView).some(({ named }) => named)).toBe(true);
  expect(ghostIn(loadView).some(({ named }) => named)).toBe(false);
});

test('no port, no picture of port air', () => {
  const closed: Project = { ...demo, enclosure: { ...demo.enclosure, ports: [] } };
  expect(portAirView.picture(testStore(closed).getState())).toBeNull();
});
