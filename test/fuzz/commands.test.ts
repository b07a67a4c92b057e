import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateProject } from '../../src/core/design/evaluateProject.ts';
import { laterChecks } from '../../src/core/design/findings/later.ts';
import { applyCommand } from '../../src/core/document/applyCommand.ts';
import { crossReferences } from '../../src/core/document/checks/crossReferences.ts';
import type { Command, CommandType } from '../../src/core/document/command.ts';
import { describeCommand } from '../../src/core/document/describe/describeCommand.ts';
import { readProject } from '../../src/core/document/file/readProject.ts';
import { writeProject } from '../../src/core/document/file/writeProject.ts';
import { shortProblems } from '../../src/core/document/graph/shortProblems.ts';
import { type Project, projectSchema } from '../../src/core/document/schema.ts';
import { newProject } from '../../src/core/document/start/newProject.ts';
import { wordedCodes } from '../../src/core/messages/word.ts';
import { createWorkbench } from '../../src/state/createWorkbench.ts';
import { memoryStorage } from '../../src/state/memoryStorage.ts';
import { deepFreeze } from '../core/document/deepFreeze.ts';
import { edited, expectWorded } from '../core/document/edits.ts';
import { twoWay } from '../core/document/twoWay.ts';
import { type Dice, makers, randomCommand } from './randomCommand.ts';

const SEED = 20260117;

const factor = fc.oneof(
  { weight: 12, arbitrary: fc.double({ min: 0.5, max: 1.6, noNaN: true }) },
  { weight: 2, arbitrary: fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e12) },
);
const die = fc.nat(9_999);
const dice: fc.Arbitrary<Dice> = fc.record({ type: die, a: die, b: die, c: die, factor });
const sequence = fc.array(dice, { minLength: 10, maxLength: 40 });
const biAmped = edited(
  twoWay,
  { type: 'remove-part', partId: 'J1', how: 'leave-open' },
  { type: 'add-across', nodes: ['hi', '0'], part: { kind: 'amplifier', note: '' } },
);
const start = fc.constantFrom(twoWay, deepFreeze(newProject()), biAmped);

/** Applies a sequence; `each` sees every step. Refused commands leave the document as it is. */
function walk(
  project: Project,
  throws: readonly Dice[],
  each: (before: Project, command: Command, after: Project | null) => void,
): Project {
  return throws.reduce((before, thrown) => {
    const command = randomCommand(before, thrown);
    const result = applyCommand(before, command);
    if (!result.ok) for (const flaw of result.problems) expectWorded(flaw);
    each(before, command, result.ok ? result.value : null);
    return result.ok ? deepFreeze(result.value) : before;
  }, project);
}

describe(`random command sequences, seed ${SEED}`, () => {
  it('leave a document that its schema accepts and that hangs together, shorts nothing anew, and can be named', () => {
    const carriedOut = new Set<CommandType>();
    const refused = new Set<CommandType>();
    fc.assert(
      fc.property(start, sequence, (project, throws) => {
        walk(project, throws, (before, command, after) => {
          expect(describeCommand(command, before)).toMatch(/^\S.{0,150}$/su);
          if (after === null) {
            refused.add(command.type);
            return;
          }
          if (after !== before) carriedOut.add(command.type);
          expect(projectSchema.safeParse(after).error?.issues).toBeUndefined();
          expect(crossReferences(after)).toEqual([]);
          if (command.type !== 'return-to-state') {
            expect(shortProblems(before.network.parts, after.network.parts)).toEqual([]);
          }
        });
      }),
      { seed: SEED, numRuns: 150 },
    );
    // The sequences must have had everything in them: each command carried out and refused at least once.
    const all = Object.keys(makers).sort();
    expect([...carriedOut].sort()).toEqual(all);
    expect(all.filter((type) => !refused.has(type as CommandType))).toEqual([]);
  });

  it('are saved and read again without a difference', () => {
    fc.assert(
      fc.property(start, sequence, (project, throws) => {
        const last = walk(project, throws, () => undefined);
        expect(readProject(writeProject(last))).toEqual({ ok: true, value: last });
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('leave a document that is predicted, or a sentence why not', () => {
    let predicted = 0;
    let explained = 0;
    fc.assert(
      fc.property(start, fc.array(dice, { minLength: 5, maxLength: 12 }), (project, throws) => {
        walk(project, throws, (before, _, after) => {
          if (after === null || after === before) return;
          const result = evaluateProject(after, undefined, laterChecks);
          if (result.ok) predicted += 1;
          else {
            explained += 1;
            expect(result.problems.length).toBeGreaterThan(0);
            for (const flaw of result.problems) expect(wordedCodes()).toContain(flaw.code);
          }
        });
      }),
      { seed: SEED, numRuns: 40 },
    );
    expect(predicted).toBeGreaterThan(50);
    expect(explained).toBeGreaterThan(0);
  });

  it('are undone to the identical document, and redone to the identical last one', () => {
    fc.assert(
      fc.property(start, sequence, (project, throws) => {
        const copy = structuredClone(project);
        const store = createWorkbench({
          project,
          evaluate: () => ({ ok: false, problems: [] }),
          drawSchematic: () => ({ ok: false, problems: [] }),
          storage: memoryStorage(),
        });
        const { dispatch, undo, redo } = store.getState();
        const states = [project];
        for (const thrown of throws) {
          dispatch(randomCommand(store.getState().project, thrown));
          const now = store.getState().project;
          if (now !== states.at(-1)) states.push(now);
        }
        for (let k = states.length - 2; k >= 0; k--) {
          undo();
          expect(store.getState().project).toBe(states[k]);
        }
        expect(store.getState()).toMatchObject({ project: copy, undoLabel: null });
        undo();
        expect(store.getState().project).toBe(project);
        for (const state of states.slice(1)) {
          redo();
          expect(store.getState().project).toBe(state);
        }
        expect(store.getState().redoLabel).toBeNull();
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});
