import { expect, it } from 'vitest';
import { applyCommand } from '../../../../src/core/document/applyCommand.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { newProject } from '../../../../src/core/document/start/newProject.ts';
import { newWayInChamber } from '../../../../src/core/document/start/newWayInChamber.ts';

const added = (project: Project, role: 'mid' | 'woofer' | 'tweeter'): Project => {
  const result = applyCommand(project, newWayInChamber(project, role));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

it('gives a mid a sealed chamber of its own', () => {
  const before = newProject();
  const after = added(before, 'mid');
  const mount = after.enclosure.mounts.at(-1)!;
  expect(after.enclosure.chambers).toHaveLength(before.enclosure.chambers.length + 1);
  expect(mount.chamberId).toBe(after.enclosure.chambers.at(-1)!.id);
  expect(after.enclosure.ports.some((port) => port.chamberId === mount.chamberId)).toBe(false);
});

it('leaves the chambers of other ways as they are', () => {
  const before = newProject();
  expect(added(before, 'tweeter').enclosure.mounts.at(-1)!.chamberId).toBeNull();
  expect(added(before, 'woofer').enclosure.chambers).toEqual(before.enclosure.chambers);
});
