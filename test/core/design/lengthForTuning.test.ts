import { expect, test } from 'vitest';
import { evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import { lengthForTuning } from '../../../src/core/design/lengthForTuning.ts';
import { applyCommand } from '../../../src/core/document/applyCommand.ts';
import type { Project } from '../../../src/core/document/schema.ts';
import { succeeded } from '../circuit/solved.ts';
import { demoProject } from './demoProject.ts';

const demo = demoProject('reading-room');
const after = (project: Project, command: Parameters<typeof applyCommand>[1]): Project =>
  succeeded(applyCommand(project, command));
const figuresOf = (project: Project) => succeeded(evaluateProject(project));
const port = demo.enclosure.ports[0]!;

test.each([28, 33, 45])('the length offered for %d Hz gives that tuning once it is used', (tuningHz) => {
  const { soundSpeedMPerS } = figuresOf(demo).simulation.air;
  const found = lengthForTuning(demo, port, tuningHz, soundSpeedMPerS);
  if (!found?.ok) throw new Error('no length');
  const changed = after(demo, { type: 'set-port', id: port.id, changes: { lengthM: found.value } });
  const tuned = figuresOf(changed).keyFigures.chambers.find((chamber) => chamber.id === port.chamberId);
  // The evaluation's own figure, with the port's new displacement; the rounds stop within 1 µm.
  expect(tuned?.tuningHz).toBeCloseTo(tuningHz, 2);
});

test('a tuning that the section cannot reach is refused in words, several kinds of port have no single length', () => {
  expect(lengthForTuning(demo, port, 400, 343)?.ok).toBe(false);
  const two = after(demo, { type: 'add-port', port: { ...port, id: 'P2' } });
  expect(lengthForTuning(two, port, 33, 343)).toBeNull();
});
