import { describe, expect, it, vi } from 'vitest';
import { evaluateProject } from '../../src/core/design/evaluateProject.ts';
import type { Evaluation } from '../../src/core/design/evaluation.ts';
import { newProject } from '../../src/core/document/start/newProject.ts';
import { fail, problem, type Result, succeed } from '../../src/core/messages/problem.ts';
import { createWorkbench } from '../../src/state/createWorkbench.ts';
import { memoryStorage } from '../../src/state/memoryStorage.ts';
import { edited } from '../core/document/edits.ts';
import { twoWay } from '../core/document/twoWay.ts';
import { bench, driveTo, evaluate, evaluationOf, plan } from './bench.ts';

vi.mock('react', () => {
  throw new Error('The store must not load React.');
});

const codes = (problems: readonly { readonly code: string }[]) => problems.map(({ code }) => code);

describe('the store', () => {
  it('works without React and without a DOM, from edit to prediction', () => {
    expect('document' in globalThis || 'window' in globalThis).toBe(false);
    const store = createWorkbench({
      project: newProject(),
      evaluate: evaluateProject,
      drawSchematic: () => succeed(plan()),
      storage: memoryStorage(),
    });
    const before = store.getState().evaluation!;
    expect(store.getState().dispatch({ type: 'set-drive', driveV: 5.66 })).toEqual([]);
    const after = store.getState().evaluation!;
    // Twice the voltage within 1e-3: 20 log10(5.66 / 2.83) = 6.0206 dB.
    expect(after.keyFigures.meanLevelDbSpl! - before.keyFigures.meanLevelDbSpl!).toBeCloseTo(6.0206, 3);
  });

  it('has a picture from the beginning', () => {
    const { evaluation, schematic, problems, refusal, undoLabel } = bench().getState();
    expect(evaluation).not.toBeNull();
    expect(schematic).not.toBeNull();
    expect([problems, refusal, undoLabel]).toEqual([[], [], null]);
  });

  it('never shows a document without its picture, undo and redo included', () => {
    const store = bench();
    const fresh: boolean[] = [];
    store.subscribe((now, before) => {
      if (now.project !== before.project) fresh.push(now.evaluation !== before.evaluation);
    });
    store.getState().dispatch(driveTo(4));
    store.getState().undo();
    store.getState().redo();
    store.getState().open(newProject());
    store.getState().restore(twoWay);
    expect(fresh).toEqual([true, true, true, true, true]);
  });

  it('labels undo and redo by what the edit did', () => {
    const store = bench();
    const labels = () => [store.getState().undoLabel, store.getState().redoLabel];
    store.getState().dispatch({ type: 'set-part', partId: 'R1', changes: { ohm: 2.2 } });
    store.getState().dispatch(driveTo(4));
    expect(labels()).toEqual(['drive 2.83 → 4.0 V', null]);
    store.getState().undo();
    expect(labels()).toEqual(['R1 1.0 → 2.2 Ω', 'drive 2.83 → 4.0 V']);
    store.getState().undo();
    expect(labels()).toEqual([null, 'R1 1.0 → 2.2 Ω']);
    store.getState().redo();
    expect(labels()).toEqual(['R1 1.0 → 2.2 Ω', 'drive 2.83 → 4.0 V']);
    store.getState().dispatch({ type: 'set-name', name: 'B' });
    expect(labels()).toEqual(['name “B”', null]);
  });

  it('is not undone or redone beyond its ends', () => {
    const store = bench();
    store.getState().undo();
    store.getState().redo();
    expect(store.getState().project).toBe(twoWay);
    expect([store.getState().undoLabel, store.getState().redoLabel]).toEqual([null, null]);
  });

  it('makes no step of an edit that changes nothing', () => {
    const store = bench();
    expect(store.getState().dispatch(driveTo(2.83))).toEqual([]);
    expect(store.getState().undoLabel).toBeNull();
  });

  it('keeps at least 200 steps, and stops cleanly at the oldest', () => {
    const store = bench();
    for (let k = 1; k <= 700; k++) store.getState().dispatch({ type: 'set-notes', notes: `${k}` });
    let steps = 0;
    while (store.getState().undoLabel !== null) {
      store.getState().undo();
      steps += 1;
    }
    expect(steps).toBeGreaterThanOrEqual(200);
    expect(store.getState().project.notes).toBe(`${700 - steps}`);
    for (let k = 0; k < steps; k++) store.getState().redo();
    expect(store.getState().project.notes).toBe('700');
  });

  it('opens another document as one step and forgets the history when it restores', () => {
    const store = bench();
    store.getState().dispatch(driveTo(4));
    const other = newProject();
    store.getState().open(other);
    expect(store.getState()).toMatchObject({ project: other, undoLabel: 'opening of “New loudspeaker”' });
    store.getState().undo();
    expect(store.getState().project.chain.driveV).toBe(4);
    store.getState().restore(other);
    expect(store.getState()).toMatchObject({ project: other, undoLabel: null, redoLabel: null });
    store.getState().undo();
    expect(store.getState().project).toBe(other);
  });
});

describe('refusals and problems', () => {
  it('a refused command changes nothing, says why, and the next success clears it', () => {
    const store = bench();
    const before = store.getState();
    const problems = before.dispatch({ type: 'set-part', partId: 'R1', changes: { ohm: -1 } });
    expect(codes(problems)).toEqual(['document.too-small']);
    const { refusal, ...rest } = store.getState();
    expect(refusal).toEqual(problems);
    const { refusal: _, ...was } = before;
    expect(rest).toEqual(was);
    expect(rest.evaluation).toBe(was.evaluation);
    store.getState().dispatch(driveTo(4));
    expect(store.getState().refusal).toEqual([]);
    store.getState().dispatch(driveTo(-4));
    store.getState().dispatch(driveTo(4));
    expect(store.getState().refusal).toEqual([]);
    store.getState().dispatch(driveTo(-4));
    store.getState().dismissRefusal();
    expect(store.getState().refusal).toEqual([]);
  });

  it('a document that cannot be solved keeps the last good picture', () => {
    const store = bench();
    store.getState().dispatch(driveTo(4));
    const good = store.getState().evaluation;
    expect(store.getState().dispatch(driveTo(13))).toEqual([]);
    expect(store.getState()).toMatchObject({ project: { chain: { driveV: 13 } } });
    expect(codes(store.getState().problems)).toEqual(['circuit.floating-node']);
    expect(store.getState().evaluation).toBe(good);
    store.getState().undo();
    expect(store.getState().problems).toEqual([]);
    expect(store.getState().evaluation).not.toBe(good);
  });

  it('a fault in the evaluation or the drawing never comes out of an edit', () => {
    const faults: unknown[] = [];
    let broken = false;
    const store = bench({
      report: (fault) => faults.push(fault),
      drawSchematic: () => {
        if (broken) throw new Error('no room');
        return succeed(plan());
      },
    });
    const { evaluation, schematic } = store.getState();
    broken = true;
    expect(store.getState().dispatch(driveTo(14))).toEqual([]);
    expect(store.getState().dispatch({ type: 'remove-part', partId: 'C1', how: 'leave-open' })).toEqual([]);
    expect(codes(store.getState().problems)).toEqual(['document.not-evaluated', 'document.not-drawn']);
    expect(store.getState().evaluation).toBe(evaluation);
    expect(store.getState().schematic).toBe(schematic);
    expect(faults.map(String)).toEqual(['Error: a fault', 'Error: no room', 'Error: a fault']);
  });

  it('hands the last good evaluation to the next one', () => {
    const previous: unknown[] = [];
    const store = bench({
      evaluate: (project, last) => {
        previous.push(last);
        return evaluate(project);
      },
    });
    const first = store.getState().evaluation;
    store.getState().dispatch(driveTo(13));
    store.getState().dispatch(driveTo(4));
    expect(previous).toEqual([undefined, first, first]);
    expect(previous[2]).toBe(first);
  });
});

describe('late evaluations', () => {
  function lateBench() {
    const answers: ((result: Result<Evaluation>) => void)[] = [];
    const store = bench({ evaluate: () => new Promise((resolve) => answers.push(resolve)) });
    return { store, answers };
  }
  const settled = () => new Promise((resolve) => setTimeout(resolve));

  it('are taken when they come for the present document and dropped for an older one', async () => {
    const { store, answers } = lateBench();
    expect(store.getState().evaluation).toBeNull();
    const [first, second, third] = [evaluationOf(), evaluationOf(), evaluationOf()];
    answers[0]!(succeed(first));
    await settled();
    expect(store.getState().evaluation).toBe(first);
    store.getState().dispatch(driveTo(4));
    store.getState().dispatch(driveTo(5));
    answers[1]!(succeed(second));
    await settled();
    expect(store.getState().evaluation).toBe(first);
    answers[2]!(succeed(third));
    await settled();
    expect(store.getState().evaluation).toBe(third);
  });

  it('may fail late without harm', async () => {
    const store = bench({ evaluate: () => Promise.reject(new Error('worker gone')) });
    expect(store.getState().dispatch(driveTo(4))).toEqual([]);
    await settled();
    expect(codes(store.getState().problems)).toEqual(['document.not-evaluated']);
  });
});

describe('selection and lifted lane', () => {
  it('go when their thing goes, stay while it is there, and follow a part that is renamed in its place', () => {
    const store = bench();
    const { select, lift, dispatch } = store.getState();
    select({ kind: 'part', id: 'R1' });
    lift('LS2');
    dispatch(driveTo(4));
    expect(store.getState().selection).toEqual({ kind: 'part', id: 'R1' });
    dispatch({ type: 'rename-part', partId: 'R1', to: 'R9' });
    expect(store.getState().selection).toEqual({ kind: 'part', id: 'R9' });
    dispatch({ type: 'remove-way', speakerId: 'LS2' });
    expect([store.getState().selection, store.getState().lifted]).toEqual([null, null]);
  });

  it('cursor and selection are no steps', () => {
    const store = bench();
    store.getState().select({ kind: 'port', id: 'port' });
    store.getState().setCursor(100);
    expect(store.getState()).toMatchObject({ cursorHz: 100, undoLabel: null });
    store.getState().undo();
    expect(store.getState()).toMatchObject({ cursorHz: 100, selection: { kind: 'port', id: 'port' } });
  });
});

describe('kept states', () => {
  it('become ghosts that are evaluated once', () => {
    let asked = 0;
    const store = bench({
      evaluate: (project) => {
        asked += 1;
        return evaluate(project);
      },
    });
    store.getState().dispatch({ type: 'keep-state', name: 'before' });
    expect(store.getState().ghosts).toMatchObject([{ id: 'state-1', name: 'before' }]);
    expect(store.getState().ghosts[0]!.evaluation).not.toBeNull();
    const { ghosts } = store.getState();
    const askedBefore = asked;
    store.getState().dispatch(driveTo(4));
    store.getState().dispatch(driveTo(5));
    expect(asked).toBe(askedBefore + 2);
    expect(store.getState().ghosts).toBe(ghosts);
    store.getState().dispatch({ type: 'drop-state', id: 'state-1' });
    expect(store.getState().ghosts).toEqual([]);
  });

  it('without a prediction are ghosts without one', () => {
    const broken = edited(twoWay, driveTo(13), { type: 'keep-state', name: 'broken' }, driveTo(4));
    expect(bench({ project: broken }).getState().ghosts).toEqual([{ id: 'state-1', name: 'broken', evaluation: null }]);
  });
});

describe('settings', () => {
  it('are read at the start, kept apart from the document and saved when they change', () => {
    const saved: unknown[] = [];
    const settingsStorage = { load: () => ({ units: 'imperial', theme: 7 }), save: (s: unknown) => saved.push(s) };
    const store = bench({ settingsStorage });
    expect(store.getState().settings).toEqual({ theme: 'auto', largeType: false, units: 'imperial', series: 'E12' });
    store.getState().setSettings({ largeType: true });
    expect(saved).toEqual([{ theme: 'auto', largeType: true, units: 'imperial', series: 'E12' }]);
    expect(store.getState()).toMatchObject({ project: twoWay, undoLabel: null, settings: { largeType: true } });
  });

  it('go on without storage', () => {
    const refuse = () => {
      throw new Error('forbidden');
    };
    const store = bench({ settingsStorage: { load: refuse, save: refuse } });
    store.getState().setSettings({ theme: 'dark' });
    expect(store.getState().settings.theme).toBe('dark');
  });
});

describe('the drawing', () => {
  it('is made again only when the circuit or the order of the lanes changes', () => {
    const drawn: (readonly string[])[] = [];
    const store = bench({
      drawSchematic: (_, ways) => {
        drawn.push(ways);
        return succeed(plan());
      },
    });
    const { dispatch } = store.getState();
    const { schematic } = store.getState();
    dispatch({ type: 'set-part', partId: 'R1', changes: { ohm: 2.2 } });
    dispatch({ type: 'set-mount', partId: 'LS1', changes: { yM: 0.16 } });
    expect(store.getState().schematic).toBe(schematic);
    dispatch({ type: 'set-mount', partId: 'LS1', changes: { yM: 0.35 } });
    dispatch({ type: 'reverse-speaker', partId: 'LS1' });
    dispatch({ type: 'rename-part', partId: 'R1', to: 'R8' });
    expect(drawn).toEqual([
      ['LS2', 'LS1'],
      ['LS1', 'LS2'],
      ['LS1', 'LS2'],
      ['LS1', 'LS2'],
    ]);
  });

  it('that fails keeps the last one and says so', () => {
    let broken = false;
    const store = bench({
      drawSchematic: () => (broken ? fail(problem('schematic.too-large', { kind: 'document' })) : succeed(plan())),
    });
    const { schematic } = store.getState();
    broken = true;
    store.getState().dispatch({ type: 'reverse-speaker', partId: 'LS1' });
    expect(store.getState().schematic).toBe(schematic);
    expect(codes(store.getState().problems)).toEqual(['schematic.too-large']);
    store.getState().dispatch(driveTo(4));
    expect(codes(store.getState().problems)).toEqual(['schematic.too-large']);
  });
});
