import { describe, expect, it } from 'vitest';
import { writeProject } from '../../src/core/document/file/writeProject.ts';
import { newProject } from '../../src/core/document/start/newProject.ts';
import { readColumns } from '../../src/core/measured/readColumns.ts';
import type { CurveChoice } from '../../src/state/workbench.ts';
import { twoWay } from '../core/document/twoWay.ts';
import { bench } from './bench.ts';

const text = ['Frequency SPL', ...[20, 50, 100, 1000, 10000].map((hz, k) => `${hz} ${80 + k}`)].join('\n');
const impedance = ['Hz Ohm', ...[20, 50, 100, 1000, 10000].map((hz, k) => `${hz} ${6 + k}`)].join('\n');
const choice: CurveChoice = {
  belongsTo: { kind: 'driver', driverId: 'tweeter' },
  taken: { baffle: 'own', voltageV: 2.83, distanceM: 0.5 },
  quantities: ['response'],
  blendHz: 500,
};

describe('opening text', () => {
  it('takes a project by its content, whatever the file is called', () => {
    const store = bench({ readColumns });
    store.getState().openText(`\uFEFF  ${writeProject(newProject())}`, 'measured.txt');
    expect(store.getState().project).toEqual(newProject());
    expect(store.getState().undoLabel).toBe('opening of “New loudspeaker”');
  });

  it('says why a project cannot be read and keeps the document', () => {
    const store = bench({ readColumns });
    for (const [source, code] of [
      ['{"format":"conewright-project","version":9}', 'document.newer-version'],
      ['{"format":', 'document.not-json'],
      ['', 'document.empty-file'],
    ] as const) {
      store.getState().openText(source, 'a.conewright.json');
      expect(store.getState().refusal.map((flaw) => flaw.code)).toEqual([code]);
      expect(store.getState().project).toBe(twoWay);
    }
  });

  it('lets measured columns wait for an answer', () => {
    const store = bench({ readColumns });
    store.getState().openText(text, 'tweeter.frd');
    expect(store.getState().pendingCurve).toMatchObject({
      fileName: 'tweeter.frd',
      curves: [{ name: 'tweeter', quantity: 'response', frequenciesHz: [20, 50, 100, 1000, 10000] }],
    });
    expect(store.getState().project).toBe(twoWay);
    store.getState().dismissCurve();
    expect(store.getState().pendingCurve).toBeNull();
  });

  it('refuses what is neither, naming the line', () => {
    const store = bench({ readColumns });
    store.getState().openText('once upon a time\nthere was a box', 'story.txt');
    expect(store.getState().refusal[0]!.code).toMatch(/^measured\./);
    expect(store.getState().pendingCurve).toBeNull();
  });

  it('takes the answer as one step: the curve, and its driver using it above the blend', () => {
    const store = bench({ readColumns });
    store.getState().openText(text, 'tweeter.txt');
    expect(store.getState().acceptCurve(choice)).toEqual([]);
    const { project, pendingCurve } = store.getState();
    expect(pendingCurve).toBeNull();
    expect(project.curves.at(-1)).toEqual({
      id: 'curve-1',
      name: 'tweeter',
      belongsTo: choice.belongsTo,
      quantity: 'response',
      frequenciesHz: [20, 50, 100, 1000, 10000],
      magnitudes: [80, 81, 82, 83, 84],
      phasesDeg: null,
      taken: choice.taken,
      sourceName: 'tweeter.txt',
    });
    expect(project.drivers[1]!.measured).toEqual({
      responseCurveId: 'curve-1',
      impedanceCurveId: null,
      blendHz: 500,
    });
    store.getState().undo();
    expect(store.getState().project).toBe(twoWay);
  });

  it('lets further files join the ones that wait, and leaves out what the answer leaves out', () => {
    const store = bench({ readColumns });
    store.getState().openText(text, 'a.txt');
    store.getState().openText(impedance, 'b.txt');
    store.getState().openText(text, 'c.txt');
    expect(store.getState().pendingCurve!.curves.map(({ name, quantity }) => [name, quantity])).toEqual([
      ['a', 'response'],
      ['b', 'impedance'],
      ['c', 'response'],
    ]);
    store.getState().acceptCurve({ ...choice, quantities: ['response', 'impedance', null] });
    expect(
      store
        .getState()
        .project.curves.slice(-2)
        .map(({ id, name }) => [id, name]),
    ).toEqual([
      ['curve-1', 'a'],
      ['curve-2', 'b'],
    ]);
    expect(store.getState().project.drivers[1]!.measured).toMatchObject({
      responseCurveId: 'curve-1',
      impedanceCurveId: 'curve-2',
    });
  });

  it('keeps the other curve of a driver, and leaves the model alone without a blend or for a whole speaker', () => {
    const store = bench({ readColumns });
    store.getState().openText(impedance, 'z.txt');
    const woofer = { kind: 'driver', driverId: 'woofer' } as const;
    store.getState().acceptCurve({ ...choice, belongsTo: woofer, quantities: ['impedance'], blendHz: 250 });
    expect(store.getState().project.drivers[0]!.measured).toEqual({
      responseCurveId: 'c1',
      impedanceCurveId: 'curve-1',
      blendHz: 250,
    });
    const { drivers } = store.getState().project;
    for (const change of [{ blendHz: null }, { belongsTo: { kind: 'speaker', channel: 'right' } as const }]) {
      store.getState().openText(text, 'left.txt');
      expect(store.getState().acceptCurve({ ...choice, ...change })).toEqual([]);
      expect(store.getState().project.drivers).toBe(drivers);
    }
  });

  it('goes on waiting when the answer is refused', () => {
    const store = bench({ readColumns });
    store.getState().openText(text, 'a.txt');
    const problems = store.getState().acceptCurve({ ...choice, belongsTo: { kind: 'driver', driverId: 'none' } });
    expect(problems.length).toBeGreaterThan(0);
    expect(store.getState().pendingCurve).not.toBeNull();
    expect(store.getState().project).toBe(twoWay);
    store.getState().dismissCurve();
    expect(
      store
        .getState()
        .acceptCurve(choice)
        .map(({ code }) => code),
    ).toEqual(['document.no-curve-waiting']);
  });

  it('takes columns from a reader that comes later, and says when it does not come', async () => {
    const later = bench({ readColumns: async (...file) => readColumns(...file) });
    later.getState().openText(text, 'a.txt');
    await expect.poll(() => later.getState().pendingCurve?.fileName).toBe('a.txt');
    const never = bench({ readColumns: () => Promise.reject(new Error('no network')) });
    never.getState().openText(text, 'a.txt');
    await expect.poll(() => never.getState().refusal.map(({ code }) => code)).toEqual(['document.not-read']);
  });
});
