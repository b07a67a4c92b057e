import { describe, expect, it } from 'vitest';
import { evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import { laterChecks } from '../../../src/core/design/findings/later.ts';
import { inNames } from '../../../src/core/design/inNames.ts';
import type { Project } from '../../../src/core/document/schema.ts';
import { type Problem, problem } from '../../../src/core/messages/problem.ts';
import { word } from '../../../src/core/messages/word.ts';
import {
  airNode,
  coneNode,
  emfNode,
  leakBranch,
  portBranch,
  volumeBranch,
} from '../../../src/core/speaker/nodeNames.ts';
import { demoProject } from './demoProject.ts';

/** The three-way demonstration with ids that no sentence can contain by chance. */
const room: Project = JSON.parse(
  ['woofer', 'mid', 'tweeter', 'low', 'middle', 'P1'].reduce(
    (text, id) => text.replaceAll(`"${id}"`, (found, at: number) => (isRole(text, at) ? found : `"xq-${id}"`)),
    JSON.stringify(demoProject('reading-room')),
  ),
);
function isRole(text: string, at: number): boolean {
  return text.slice(0, at).endsWith('"role":');
}
const told = (project: Project): readonly Problem[] => {
  const result = evaluateProject(project, undefined, laterChecks);
  return result.ok ? result.value.findings : result.problems;
};
const sentences = (problems: readonly Problem[]) =>
  problems.map((flaw) => {
    const { sentence, remedy } = word(flaw);
    return `${sentence} ${remedy}`;
  });
const withEnclosure = (changes: Partial<Project['enclosure']>): Project => ({
  ...room,
  enclosure: { ...room.enclosure, ...changes },
});
const { chambers, ports } = room.enclosure;
const low = chambers[0]!;
const loud = { ...room.chain, driveV: 60 };

describe('sentences about a design', () => {
  it.each<[string, Project, RegExp]>([
    [
      'a chamber without air',
      withEnclosure({ chambers: chambers.map((c) => ({ ...c, bracesM3: 0.2 })) }),
      /^Chamber “woofer chamber” has no air left/,
    ],
    [
      'a driver without numbers',
      { ...room, drivers: room.drivers.map((d) => ({ ...d, entered: { reOhm: 5 } })) },
      /^Driver 28 mm dome tweeter is not fully known/m,
    ],
    [
      'a data sheet that contradicts itself',
      { ...room, drivers: room.drivers.map((d) => ({ ...d, entered: { ...d.entered, qts: 0.9 } })) },
      /^Driver 220 mm woofer has Qts/m,
    ],
    ['fast air in the only port', { ...room, chain: loud }, /^Air in the port reaches/m],
    [
      'fast air in one of two ports',
      { ...withEnclosure({ ports: [ports[0]!, { ...ports[0]!, id: 'P2', lengthM: 0.2 }] }), chain: loud },
      /^Air in port P2 reaches/m,
    ],
    [
      'chambers in the same space',
      withEnclosure({ chambers: chambers.map((c) => ({ ...c, volume: low.volume })) }),
      /^The bounds of the chamber “mid chamber” reach into/m,
    ],
    [
      'a shallow cabinet',
      withEnclosure({ depthM: 0.11, ports: ports.map((p) => ({ ...p, yM: 0.02 })) }),
      /^The port is [\d.]+ mm long, and the wall/m,
    ],
    [
      'a place in a chamber that is gone',
      withEnclosure({ ports: ports.map((p) => ({ ...p, chamberId: 'gone' })) }),
      /^The port names a chamber that is not in the project: gone/m,
    ],
    [
      'a chamber without a name',
      withEnclosure({ chambers: chambers.map((c) => ({ ...c, name: '', bracesM3: 0.2 })) }),
      /^Chamber “chamber 2” has no air left/m,
    ],
  ])('say names, not ids: %s', (_, project, said) => {
    const problems = told(project);
    const all = sentences(problems).join('\n');
    expect(all).toMatch(said);
    const multi = project.enclosure.ports.length > 1;
    expect(multi ? all.replaceAll(/port xq-P1/gi, '') : all).not.toMatch(/xq-/);
  });

  it('keep the id as the place, for the way there', () => {
    const problems = told(withEnclosure({ chambers: chambers.map((c) => ({ ...c, bracesM3: 0.2 })) }));
    expect(problems.map(({ place }) => [place.kind, place.id])).toEqual(chambers.map(({ id }) => ['chamber', id]));
  });

  it('have words for what only the solved circuit has', () => {
    const said = (values: Problem['values']) =>
      sentences(inNames([problem('circuit.floating-node', { kind: 'node', id: 'x' }, values)], room))[0];
    expect(said({ node: emfNode('LS1'), part: coneNode('LS2') })).toMatch(/^Node inside LS1 at inside LS2 has/);
    expect(said({ node: airNode('xq-low'), part: volumeBranch('xq-low') })).toMatch(
      /^Node the air of chamber “woofer chamber” at the air of chamber “woofer chamber” has/,
    );
    expect(said({ node: 'a', part: leakBranch('xq-middle') })).toContain('the leak of chamber “mid chamber”');
    expect(said({ node: 'a', part: portBranch('xq-P1') })).toContain('at the air in the port has');
    expect(said({ node: 'hi', part: 'C5' })).toMatch(/^Node hi at C5 has no path/);
  });
});
