import { expect, it } from 'vitest';
import { evaluateProject } from '../../../../src/core/design/evaluateProject.ts';
import { isobaricStart } from '../../../../src/core/design/starts/isobaricStart.ts';
import { applyCommand } from '../../../../src/core/document/applyCommand.ts';
import { newProject } from '../../../../src/core/document/start/newProject.ts';
import { demoProject, withPart } from '../demoProject.ts';

const silent = (project: Parameters<typeof evaluateProject>[0]): (string | undefined)[] => {
  const result = evaluateProject(project);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value.findings.filter(({ code }) => code === 'finding.silent-way').map(({ place }) => place.id);
};

it('a driver that its crossover keeps quiet is said, one behind another of an isobaric pair is not', () => {
  expect(silent(withPart(demoProject('reading-room'), 'C5', { farad: 5e-9 }))).toEqual(['LS3']);
  const start = newProject();
  const command = isobaricStart(start, 'LS1');
  if (!command.ok) throw new Error(JSON.stringify(command.problems));
  const pair = applyCommand(start, command.value);
  if (!pair.ok) throw new Error(JSON.stringify(pair.problems));
  expect(pair.value.enclosure.mounts).toHaveLength(2);
  expect(silent(pair.value)).toEqual([]);
});
