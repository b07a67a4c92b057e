import { expect } from 'vitest';
import { applyCommand } from '../../../src/core/document/applyCommand.ts';
import { crossReferences } from '../../../src/core/document/checks/crossReferences.ts';
import type { Command } from '../../../src/core/document/command.ts';
import { type Project, projectSchema } from '../../../src/core/document/schema.ts';
import { documentWording } from '../../../src/core/messages/document.ts';
import type { Problem } from '../../../src/core/messages/problem.ts';
import { word } from '../../../src/core/messages/word.ts';
import { deepFreeze } from './deepFreeze.ts';

/** The document after an edit that must succeed; it is checked against schema and cross references, and frozen. */
export function edited(project: Project, ...commands: readonly Command[]): Project {
  return commands.reduce((current, command) => {
    const result = applyCommand(current, command);
    if (!result.ok) throw new Error(`Refused: ${result.problems.map((flaw) => word(flaw).sentence).join(' ')}`);
    expect(projectSchema.safeParse(result.value).error?.issues).toBeUndefined();
    expect(crossReferences(result.value)).toEqual([]);
    return deepFreeze(result.value);
  }, project);
}

/** The problems of an edit that must be refused; each one must be worded completely. */
export function refusalOf(project: Project, command: Command): readonly Problem[] {
  const result = applyCommand(project, command);
  if (result.ok) throw new Error(`${command.type} was carried out.`);
  expect(result.problems.length).toBeGreaterThan(0);
  for (const flaw of result.problems) expectWorded(flaw);
  return result.problems;
}

/** The codes of a refusal, without their room. */
export const refusedFor = (project: Project, command: Command): readonly string[] =>
  refusalOf(project, command).map(({ code }) => code.replace('document.', ''));

/** A sentence and a remedy of its own, with every value filled in. */
export function expectWorded(flaw: Problem): void {
  expect(Object.keys(documentWording)).toContain(flaw.code);
  const { sentence, remedy } = word(flaw);
  for (const text of [sentence, remedy]) {
    expect(text).toMatch(/^\S.*[.]$/su);
    expect(text).not.toMatch(/undefined|NaN|\[object|null/);
  }
}

/** What a part stands between, as text. */
export const wiring = (project: Project): readonly string[] =>
  project.network.parts.map(({ id, nodes }) => `${id} ${nodes.join(' ')}`);
