import { expect, test } from 'vitest';
import type { Curve, Project } from '../../../../src/core/document/schema.ts';
import { readAt } from '../../../../src/plot/index.ts';
import type { Picture } from '../../../../src/ui/plots/picture.ts';
import {
  delayView,
  loadView,
  loudestView,
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
/** The demonstration with other openings of its woofer's chamber in the place of its port. */
const withOpenings = (openings: Partial<Project['enclosure']>): Project => ({
  ...demo,
  enclosure: { ...demo.enclosure, ports: [], ...openings },
});
const { chamberId } = demo.enclosure.ports[0]!;
const radiator: Project['enclosure']['passiveRadiators'][number] = {
  ...{ id: 'PR1', name: 'back radiator', chamberId, count: 1, sdM2: 0.032, mmsKg: 0.09, fsHz: 20, qms: 8 },
  ...{ addedMassKg: 0.05, xmaxM: 0.005, outerDiameterM: 0.25, face: 'back', xM: 0, yM: 0.3 },
};
const line: Project['enclosure']['lines'][number] = {
  ...{ id: 'LN1', name: '', chamberId, lengthM: 0.4, startAreaM2: 0.003, endAreaM2: 0.002, filling: null },
  end: { kind: 'open', face: 'back', xM: 0.05, yM: 0.6 },
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

test('passive radiators and lines are shown as ports are: heard, moving, streaming, by their names', () => {
  const state = testStore(withOpenings({ passiveRadiators: [radiator], lines: [line] })).getState();
  const figures = state.evaluation?.keyFigures;
  const names = responseView.picture(state)?.curves.map((curve) => curve.name);
  expect(names).toEqual(['back radiator', 'transmission line 1', 'woofer cone', 'mid', 'tweeter', 'sum']);
  const travel = curveOf(travelView.picture(state), 'radiator:PR1');
  expect(travel.name).toBe('back radiator');
  expect(greatest(travel.values, travel.frequenciesHz)).toBeCloseTo(
    1000 * (figures?.radiatorExcursions[0]?.peakM ?? 0),
    9,
  );
  const air = curveOf(portAirView.picture(state), 'line:LN1');
  expect(greatest(air.values, air.frequenciesHz)).toBeCloseTo(figures?.lineSpeeds[0]?.peakMPerS ?? 0, 9);
  const loud = testStore({ ...state.project, chain: { ...demo.chain, driveV: 12 } }).getState();
  expect(travelView.picture(loud)?.lines.map(({ id, value }) => [id, value])).toContainEqual(['limit:PR1', 5]);
});

test('a cone with a chamber in front of it, and a port between chambers, are no curves of what is heard', () => {
  const [own] = demo.enclosure.ports;
  const front: Project['enclosure']['chambers'][number] = {
    ...demo.enclosure.chambers[0]!,
    id: 'front',
    name: 'front chamber',
    volume: { kind: 'stated', grossM3: 0.02 },
  };
  const state = testStore({
    ...demo,
    enclosure: {
      ...demo.enclosure,
      chambers: [...demo.enclosure.chambers, front],
      mounts: demo.enclosure.mounts.map((mount) =>
        mount.partId === 'LS1' ? { ...mount, frontChamberId: 'front' } : mount,
      ),
      ports: [
        { ...own!, id: 'P1', toChamberId: 'front' },
        { ...own!, id: 'P2', chamberId: 'front', lengthM: 0.05 },
      ],
    },
  }).getState();
  expect(state.problems).toEqual([]);
  expect(responseView.picture(state)?.curves.map(({ id }) => id)).toEqual(['port:P2', 'cone:LS2', 'cone:LS3', 'sum']);
  expect(phaseView.picture(state)?.curves.map(({ id }) => id)).toEqual(['cone:LS2', 'cone:LS3', 'sum']);
  expect(portAirView.picture(state)?.curves.map(({ id }) => id)).toEqual(['port:P1', 'port:P2']);
  expect(travelView.picture(state)?.curves.map(({ id }) => id)).toEqual(['cone:LS1', 'cone:LS2', 'cone:LS3']);
  expect(curveOf(portAirView.picture(state), 'port:P2').speakerId).toBe('LS1');
});

test('port air: rounded ends have guide values of their own, and a word on what they do', () => {
  const rounded = { ...demo.enclosure.ports[0]!, innerFlareM: 0.03, outerFlareM: 0.03 };
  const at = (driveV: number) =>
    portAirView.picture(
      testStore({ ...withOpenings({ ports: [rounded] }), chain: { ...demo.chain, driveV } }).getState(),
    );
  expect(curveOf(at(0.3), `port:${rounded.id}`).name).toBe('port, rounded ends: quiet');
  const perVolt = greatest(
    curveOf(at(1), `port:${rounded.id}`).values,
    curveOf(at(1), `port:${rounded.id}`).frequenciesHz,
  );
  const loud = at(21 / perVolt);
  expect(loud?.lines.map(({ value }) => value)).toEqual([15, 20]);
  expect(curveOf(loud, `port:${rounded.id}`).name).toBe('port, rounded ends: likely heard, by its speed');
});

test('greatest level: every frequency is ended by one limit, named in words, above the level at the set drive', () => {
  const state = testStore().getState();
  const picture = loudestView.picture(state);
  const ends = picture?.curves.filter(({ id }) => id.startsWith('end:')) ?? [];
  expect(ends.map(({ name }) => name)).toEqual(
    expect.arrayContaining([
      'woofer excursion',
      'air in port',
      'woofer coil heat (usual values)',
      'tweeter rated power',
    ]),
  );
  const now = curveOf(picture, 'sum');
  for (const [i, hz] of Array.from(now.frequenciesHz).entries()) {
    if (hz < 20) continue;
    const here = ends.map(({ values }) => values[i] ?? Number.NaN).filter(Number.isFinite);
    // Two where one limit takes over from another, and they meet.
    expect(here.length === 1 || (here.length === 2 && here[0] === here[1])).toBe(true);
    // The demonstration passes no limit at its drive.
    expect(here[0]).toBeGreaterThan(now.values[i] ?? Number.POSITIVE_INFINITY);
  }
  expect(picture?.left.title).toContain('a sine for a minute (not a test to play) at 2.5 m, on its own baffle');
});

test('greatest level: the excursion that ends it is where the drive would bring the cone to its limit', () => {
  const state = testStore().getState();
  const end = curveOf(loudestView.picture(state), 'end:excursion:LS1');
  const woofer = state.evaluation?.simulation.speakers.find(({ partId }) => partId === 'LS1');
  const now = curveOf(loudestView.picture(state), 'sum');
  const limitM = state.evaluation?.keyFigures.excursions.find(({ partId }) => partId === 'LS1')?.limitM ?? 0;
  const i = Array.from(end.values).findIndex(
    (value, at) => Number.isFinite(value) && (now.frequenciesHz[at] ?? 0) > 50,
  );
  const spareDb = 20 * Math.log10(limitM / (woofer?.excursionPeakM[i] ?? 0));
  expect(end.values[i]).toBeCloseTo((now.values[i] ?? 0) + spareDb, 9);
});

test('greatest level: an active high-pass is heard in what is left, a stated amplifier ends it, and a kept state stays as a ghost', () => {
  const store = testStore();
  store.getState().dispatch({ type: 'keep-state', name: 'full range' });
  const highPass = { shape: 'butterworth', order: 2, cornerHz: 80 } as const;
  store.getState().dispatch({ type: 'set-amplifier', id: 'V1', changes: { highPass, peakVoltageV: 30 } });
  const picture = loudestView.picture(store.getState());
  expect(picture?.curves.map(({ name }) => name)).toContain('V1 voltage');
  const ghost = picture?.curves.find(({ id }) => id.startsWith('kept:'));
  expect(ghost?.name).toBe('kept: full range');
  // Where excursion ended it before, the same cone motion makes the same sound: the high-pass changes nothing there.
  const i = Array.from(ghost?.frequenciesHz ?? []).findIndex((hz) => hz > 60);
  const ends =
    picture?.curves.filter(({ id }) => id.startsWith('end:')).map(({ values }) => values[i] ?? Number.NaN) ?? [];
  expect(ends.find(Number.isFinite)).toBeCloseTo(ghost?.values[i] ?? 0, 6);
  const moved = (of: typeof travelView) =>
    greatest(curveOf(of.picture(store.getState()), 'cone:LS1').values, ghost?.frequenciesHz ?? []);
  const before = greatest(
    curveOf(travelView.picture(testStore().getState()), 'cone:LS1').values,
    ghost?.frequenciesHz ?? [],
  );
  expect(moved(travelView)).toBeLessThan(0.5 * before);
});
