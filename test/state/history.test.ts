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

describe('opened documents', () => {
  const other = { ...twoWay, name: 'Other' };

  it('are told from one another through undo and redo, and crossing from one to another is said', () => {
    const store = bench();
    const first = store.getState().opening;
    store.getState().dispatch(driveTo(4));
    expect(store.getState().opening).toBe(first);
    store.getState().open(other);
    const second = store.getState().opening;
    expect(second).not.toBe(first);
    expect(store.getState()).toMatchObject({ undoLabel: 'opening of “Other”', crossing: null });
    store.getState().dispatch(driveTo(5));
    store.getState().undo();
    expect(store.getState()).toMatchObject({ opening: second, crossing: null });
    store.getState().undo();
    const back = { by: 'undo', from: 'Other', to: twoWay.name };
    expect(store.getState()).toMatchObject({ opening: first, crossing: back });
    expect(store.getState().project.chain.driveV).toBe(4);
    store.getState().redo();
    const again = { by: 'redo', from: twoWay.name, to: 'Other' };
    expect(store.getState()).toMatchObject({ opening: second, crossing: again });
    store.getState().dispatch(driveTo(6));
    expect(store.getState().crossing).toBeNull();
  });

  it('are never taken for the one that a step back has left', () => {
    const store = bench();
    store.getState().open(other);
    const { opening } = store.getState();
    store.getState().undo();
    store.getState().dismissCrossing();
    expect(store.getState().crossing).toBeNull();
    store.getState().open({ ...twoWay, name: 'Third' });
    expect(store.getState().opening).not.toBe(opening);
  });
});

describe('a refusal that is said in its place', () => {
  it('leaves the page’s line, and nothing else does', () => {
    const store = bench();
    const found = store.getState().dispatch(driveTo(-1));
    expect(store.getState().refusal).toEqual(found);
    store.getState().saidInPlace([]);
    expect(store.getState().refusal).toEqual(found);
    store.getState().saidInPlace(found);
    expect(store.getState().refusal).toEqual([]);
  });
});
