import { describe, expect, it } from 'vitest';
import { MOST_STEPS } from '../../src/state/history.ts';
import { twoWay } from '../core/document/twoWay.ts';
import { bench, driveTo } from './bench.ts';

const port = (lengthM: number) => ({ type: 'set-port', id: 'port', changes: { lengthM } }) as const;

describe('gestures', () => {
  it('are one step, labelled from their beginning to their end', () => {
    const store = bench();
    store.getState().beginGesture();
    for (const lengthM of [0.117, 0.11, 0.1, 0.096]) store.getState().dispatch(port(lengthM));
    expect(store.getState().undoLabel).toBe('port length 118 → 96 mm');
    store.getState().endGesture();
    expect(store.getState().undoLabel).toBe('port length 118 → 96 mm');
    store.getState().undo();
    expect(store.getState()).toMatchObject({ undoLabel: null, redoLabel: 'port length 118 → 96 mm' });
    expect(store.getState().project).toBe(twoWay);
    store.getState().redo();
    expect(store.getState().project.enclosure.ports[0]!.lengthM).toBe(0.096);
  });

  it('update the picture at every step', () => {
    const store = bench();
    store.getState().beginGesture();
    const pictures = [0.117, 0.11].map((lengthM) => {
      store.getState().dispatch(port(lengthM));
      return store.getState().evaluation;
    });
    expect(new Set(pictures).size).toBe(2);
  });

  it('go back to their mark as if nothing had been done', () => {
    const store = bench();
    store.getState().dispatch(driveTo(4));
    store.getState().dispatch(driveTo(5));
    store.getState().undo();
    const { project, undoLabel, redoLabel } = store.getState();
    store.getState().beginGesture();
    store.getState().dispatch(port(0.1));
    store.getState().dispatch(port(0.09));
    store.getState().cancelGesture();
    expect(store.getState().project).toBe(project);
    expect(store.getState()).toMatchObject({ undoLabel, redoLabel });
    store.getState().redo();
    expect(store.getState().project.chain.driveV).toBe(5);
    store.getState().undo();
    store.getState().undo();
    expect(store.getState().project).toBe(twoWay);
  });

  it('that are called off cost no step, even when the history is full', () => {
    const store = bench();
    for (let k = 1; k <= MOST_STEPS; k++) store.getState().dispatch({ type: 'set-notes', notes: `${k}` });
    store.getState().beginGesture();
    store.getState().dispatch(port(0.1));
    store.getState().cancelGesture();
    for (let k = 1; k <= MOST_STEPS; k++) store.getState().undo();
    expect(store.getState().project).toBe(twoWay);
  });

  it('that come back to where they began are no step', () => {
    const store = bench();
    store.getState().dispatch(driveTo(4));
    const { project } = store.getState();
    store.getState().beginGesture();
    store.getState().dispatch(port(0.1));
    store.getState().dispatch(port(0.118));
    store.getState().endGesture();
    expect(store.getState().project).toBe(project);
    expect(store.getState().undoLabel).toBe('drive 2.83 → 4.0 V');
    store.getState().undo();
    expect(store.getState().project).toBe(twoWay);
  });

  it('without an edit are no step, and edits after them are steps of their own', () => {
    const store = bench();
    store.getState().beginGesture();
    store.getState().endGesture();
    store.getState().cancelGesture();
    expect(store.getState().undoLabel).toBeNull();
    store.getState().dispatch(driveTo(4));
    store.getState().dispatch(driveTo(5));
    store.getState().undo();
    expect(store.getState().project.chain.driveV).toBe(4);
  });

  it('leave steps of their own to edits without a gesture, even of the same value', () => {
    const store = bench();
    for (const lengthM of [0.117, 0.11, 0.1]) store.getState().dispatch(port(lengthM));
    store.getState().undo();
    expect(store.getState().project.enclosure.ports[0]!.lengthM).toBe(0.11);
  });

  it('are ended by another one, by opening a document, and called off by undo', () => {
    const store = bench();
    store.getState().beginGesture();
    store.getState().dispatch(port(0.1));
    store.getState().beginGesture();
    store.getState().dispatch(driveTo(4));
    store.getState().undo();
    expect(store.getState().project.chain.driveV).toBe(2.83);
    expect(store.getState().project.enclosure.ports[0]!.lengthM).toBe(0.1);
    store.getState().beginGesture();
    store.getState().dispatch(driveTo(6));
    store.getState().open(twoWay);
    store.getState().undo();
    expect(store.getState().project.chain.driveV).toBe(6);
    store.getState().undo();
    store.getState().undo();
    expect(store.getState().project).toBe(twoWay);
  });

  it('keep what was refused in them out of the history', () => {
    const store = bench();
    store.getState().beginGesture();
    store.getState().dispatch(port(0.1));
    store.getState().dispatch(port(-0.1));
    expect(store.getState().refusal).toHaveLength(1);
    store.getState().endGesture();
    expect(store.getState().project.enclosure.ports[0]!.lengthM).toBe(0.1);
    store.getState().undo();
    expect(store.getState().project).toBe(twoWay);
    expect(store.getState().refusal).toEqual([]);
  });
});
