import { expect, test } from 'vitest';
import { evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import { sealedWishFor } from '../../../src/core/design/sealedWishFor.ts';
import { applyCommand } from '../../../src/core/document/applyCommand.ts';
import type { Project } from '../../../src/core/document/schema.ts';
import { succeeded } from '../circuit/solved.ts';
import { demoProject } from './demoProject.ts';

const demo = demoProject('reading-room');
const after = (project: Project, command: Parameters<typeof applyCommand>[1]): Project =>
  succeeded(applyCommand(project, command));
const figuresOf = (project: Project) => succeeded(evaluateProject(project));
const mid = demo.enclosure.chambers.find((chamber) => chamber.id === 'middle')!;

test.each(['geometry', 'stated'] as const)('the volume offered for a Qtc gives it once it is used (%s)', (kind) => {
  const start =
    kind === 'geometry'
      ? demo
      : after(demo, { type: 'set-chamber', id: mid.id, changes: { volume: { kind, grossM3: 0.005 } } });
  const chamber = start.enclosure.chambers.find(({ id }) => id === mid.id)!;
  const found = sealedWishFor(start, chamber, 0.6);
  if (!found?.ok || !found.value.sized.ok) throw new Error('no volume');
  const changed = after(start, {
    type: 'set-chamber',
    id: mid.id,
    changes: { volume: found.value.sized.value.volume },
  });
  const figure = figuresOf(changed).keyFigures.chambers.find(({ id }) => id === mid.id);
  // A bound lands on 0.1 mm, of 150 mm: 0.1 %.
  expect(figure?.sealed?.qtc).toBeCloseTo(0.6, 2);
  expect(figure?.netM3).toBeCloseTo(found.value.netM3, 5);
});

test('a Qtc below the driver’s own Q is refused', () => {
  const found = sealedWishFor(demo, mid, 0.2);
  expect(found?.ok).toBe(false);
});
