import { describe, expect, it } from 'vitest';
import { MOST_CHARACTERS, readProject } from '../../../../src/core/document/file/readProject.ts';
import { writeProject } from '../../../../src/core/document/file/writeProject.ts';
import { newProject } from '../../../../src/core/document/start/newProject.ts';
import { word } from '../../../../src/core/messages/word.ts';
import { edited, expectWorded } from '../edits.ts';
import { twoWay } from '../twoWay.ts';

const text = writeProject(twoWay);

/** The text with one value at a path replaced, or taken out. */
function changed(path: string, value: unknown): string {
  const document = JSON.parse(text) as Record<string, unknown>;
  const steps = path.split('.');
  const last = steps.pop()!;
  const holder = steps.reduce<Record<string, unknown>>((at, step) => at[step] as Record<string, unknown>, document);
  if (value === undefined) delete holder[last];
  else holder[last] = value;
  return JSON.stringify(document);
}

function problemsOf(source: string) {
  const result = readProject(source);
  if (result.ok) throw new Error('The text was accepted.');
  for (const flaw of result.problems) expectWorded(flaw);
  return result.problems;
}
const sentences = (source: string) => problemsOf(source).map((flaw) => word(flaw).sentence);

describe('readProject', () => {
  it('reads what was written', () => {
    for (const project of [twoWay, newProject(), edited(twoWay, { type: 'keep-state', name: 'a' })]) {
      expect(readProject(writeProject(project))).toEqual({ ok: true, value: project });
    }
  });

  it('fills in what may be left out, and reads past a byte order mark', () => {
    const read = readProject(`\uFEFF${changed('network.parts.1.note', undefined)}`);
    expect(read).toEqual({ ok: true, value: twoWay });
  });

  it.each<[string, unknown, string]>([
    ['drivers.1.entered.fsHz', -3, 'The resonance fs of driver 2 is −3.0 Hz; it must be above 0 Hz.'],
    ['drivers.1.entered.fsHz', '45', 'The resonance fs of driver 2 should be a number, but “45” was found.'],
    ['enclosure.widthM', undefined, 'The width is missing.'],
    ['enclosure.widthM', null, 'The width should be a number, but “an empty value” was found.'],
    ['enclosure.ports.0.shape.kind', 'oval', 'The kind of shape of port 1 is “oval”; it must be one of round, slot.'],
    ['enclosure.chambers.0.volume.topM', -1, 'The upper bound of chamber 1 is −1 000 mm; it must be above 0 mm.'],
    ['network.parts.2.kind', 'coil', 'The kind of part 3 is “coil”; it must be one of'],
    ['network.parts.2.farads', 1, 'Part 3 has a field “farads” that is not known here.'],
    ['network.parts.2.nodes', ['a b', '0'], '“a b” cannot be a node'],
    ['drivers.0.entered.fsHZ', 38, 'Data sheet of driver 1 has a field “fsHZ” that is not known here.'],
    ['drivers.0.measured.blend', 300, 'Measured curves of driver 1 has a field “blend” that is not known here.'],
    ['curves.0.frequenciesHz.2', -5, 'The entry 3 of frequencies of curve 1 is −5.0 Hz; it must be above 0 Hz.'],
    ['listening.radiation', 'sideways', 'The radiation is “sideways”; it must be one of baffle-step, half-space, full'],
    ['air', 20, 'The air should be a group of fields, but 20 was found.'],
    ['name', '', 'The name is empty.'],
    ['colour', 'red', 'The document has a field “colour” that is not known here.'],
    ['enclosure.mounts.0.chamberId', 'attic', 'LS1 is set into the chamber “attic”, and there is none of that name.'],
    ['curves.0.magnitudes', [1, 2, 3], 'The curve “c1” has 4 frequencies but 3 magnitudes.'],
  ])('refuses %s = %o in a sentence', (path, value, sentence) => {
    expect(sentences(changed(path, value)).join('\n')).toContain(sentence.replace('1 000', '1000'));
  });

  it('drops no field anywhere in silence', () => {
    const groups = (thing: unknown, path: string): string[] =>
      typeof thing !== 'object' || thing === null
        ? []
        : [
            ...(Array.isArray(thing) ? [] : [path]),
            ...Object.entries(thing).flatMap(([key, inner]) => groups(inner, path === '' ? key : `${path}.${key}`)),
          ];
    const paths = groups(JSON.parse(text), '');
    for (const group of ['', 'drivers.0.entered', 'drivers.0.measured', 'curves.0.taken', 'chain.amplifiers.0']) {
      expect(paths).toContain(group);
    }
    for (const path of paths) {
      const problems = problemsOf(changed(path === '' ? 'stray' : `${path}.stray`, 1));
      expect(
        problems.map(({ code }) => code),
        path,
      ).toEqual(['document.unknown-field']);
    }
  });

  it('refuses what is no project', () => {
    const codes = (source: string) => problemsOf(source).map(({ code }) => code.replace('document.', ''));
    expect(codes('')).toEqual(['empty-file']);
    expect(codes(' \n ')).toEqual(['empty-file']);
    expect(codes('[]')).toEqual(['not-a-project']);
    expect(codes('null')).toEqual(['not-a-project']);
    expect(codes('7')).toEqual(['not-a-project']);
    expect(codes('{}')).toEqual(['not-a-project']);
    expect(codes('{"format":"something-else","version":1}')).toEqual(['not-a-project']);
    expect(codes(changed('version', 3))).toEqual(['newer-version']);
    expect(codes(changed('version', 'one'))).toEqual(['bad-version']);
    expect(codes(`${' '.repeat(MOST_CHARACTERS)}{}`)).toEqual(['too-large-file']);
  });

  it('names the line where a text breaks off or goes wrong', () => {
    const lines = text.split('\n');
    const broken = [...lines.slice(0, 6), '  !', ...lines.slice(6)].join('\n');
    expect(problemsOf(broken)).toMatchObject([{ code: 'document.not-json', place: { kind: 'file', line: 7 } }]);
    const cut = lines.slice(0, 40).join('\n');
    expect(problemsOf(cut)).toMatchObject([{ code: 'document.not-json', place: { kind: 'file', line: 40 } }]);
  });

  it('survives nesting that is meant to exhaust it', () => {
    const deep = `{"format":"conewright-project","version":1,"name":${'['.repeat(200_000)}`;
    expect(problemsOf(deep)[0]!.code).toBe('document.not-json');
  });

  it('stops after a dozen problems and says how many more there are', () => {
    const problems = problemsOf(
      changed('curves.0.frequenciesHz', [-1, -2, -3, -4, -5, -6, -7, -8, -9, -10, -11, -12, -13, -14]),
    );
    expect(problems).toHaveLength(13);
    expect(problems.at(-1)).toMatchObject({ code: 'document.more-problems', values: { count: 2 } });
  });

  it('never throws on texts cut or altered anywhere', () => {
    for (let at = 0; at < text.length; at += 37) {
      readProject(text.slice(0, at));
      readProject(`${text.slice(0, at)}9${text.slice(at + 1)}`);
    }
    expect(readProject(text).ok).toBe(true);
  });
});
