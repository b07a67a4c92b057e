import { describe, expect, test } from 'vitest';
import kitchenShelf from '../../../../demo-data/kitchen-shelf/kitchen-shelf.conewright.json';
import portLesson from '../../../../demo-data/port-lesson/port-lesson.conewright.json';
import { layOutSheets } from '../../../../src/core/build/sheets/index.ts';
import type { Project, Wood } from '../../../../src/core/document/schema.ts';
import { problem } from '../../../../src/core/messages/problem.ts';
import { balanceOf } from '../../../../src/ui/build/read/balanceOf.ts';
import { buildNames } from '../../../../src/ui/build/read/buildNames.ts';
import { cutListCsv, cutListText, lineNotes } from '../../../../src/ui/build/read/cutListText.ts';
import { guessedFittings } from '../../../../src/ui/build/read/guessedFittings.ts';
import { bevelWords, noteWords } from '../../../../src/ui/build/read/noteWords.ts';
import { type Build, markOf, readBuild } from '../../../../src/ui/build/read/readBuild.ts';
import { boardGroups, cuttingJobOf } from '../../../../src/ui/build/sheets/cuttingJobOf.ts';
import { partLabel } from '../../../../src/ui/build/sheets/partLabel.ts';
import { pieceNames } from '../../../../src/ui/build/sheets/pieceNames.ts';
import { demo } from '../plots/openWorkbench.tsx';

const withWood = (project: Project, changes: Partial<Wood>): Project => ({
  ...project,
  enclosure: { ...project.enclosure, wood: { ...project.enclosure.wood, ...changes } },
});
const buildOf = (project: Project): Build => {
  const build = readBuild(project);
  if (!build.ok) throw new Error(build.problems.map(({ code }) => code).join());
  return build.value;
};
const demos = [demo, kitchenShelf as unknown as Project, portLesson as unknown as Project];
const braced = withWood(demo, {
  joint: 'rebate',
  frontM: 0.025,
  braces: [{ id: 'b', chamberId: 'low', lies: 'level', atM: 0.3, thicknessM: 0.015, openShare: 0.5 }],
});
const leaning = withWood(demos[2]!, { joint: 'mitre', frontLeanDeg: 5, backWidthM: 0.2 });

// The two sides come from different computations of core: boards as solids, air by what is taken out.
test.each([...demos, braced, leaning])('wood and air of $name add up to the outer volume', (project) => {
  const { panels, volumes } = buildOf(project);
  if (!volumes.ok) throw new Error('no volumes');
  const balance = balanceOf(panels, volumes.value);
  expect(Math.abs(balance.offShare)).toBeLessThan(1e-9);
  expect(balance.woodM3).toBeGreaterThan(0.1 * balance.outerM3);
  const without = balanceOf(panels.slice(1), volumes.value);
  expect(without.offShare).toBeLessThan(-0.01);
});

describe('names', () => {
  test('stand for ids of panels, spaces, and things', () => {
    const names = buildNames(braced, ['low', 'unused 1', 'unused 3']);
    expect(names.panel('left')).toBe('left side');
    expect(names.panel('front')).toBe('front');
    expect(names.panel('P1 top')).toBe('top board of port P1');
    expect(names.panel('board behind middle')).toBe('board behind mid chamber');
    expect(names.panel('b')).toBe('brace 1');
    expect(names.space('unused 3')).toBe('unused space 2');
    expect(names.thing('LS1')).toBe('woofer');
    expect(buildNames(demos[1]!).space('inside')).toBe(demos[1]!.enclosure.chambers[0]!.name);
  });
  test('are put into sentences, walls left as they are', () => {
    const flaw = problem('build.web-at-edge', { kind: 'mount', id: 'LS1' }, { name: 'LS1', wall: 'left', haveM: 1 });
    expect(buildNames(demo).named(flaw).values).toEqual({ name: 'woofer', wall: 'left', haveM: 1 });
  });
  test('of lines are letters', () => {
    expect([0, 25, 26, 51, 52].map(markOf)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA']);
  });
});

test('notes say how an edge lies to the length, whichever way that stands', () => {
  const mitre = { kind: 'mitre', runs: 'across', count: 2, angleDeg: 45 } as const;
  expect(noteWords(mitre, 'up')).toBe('mitre 45° along the width, 2 edges');
  expect(noteWords(mitre, 'across')).toBe('mitre 45° along the length, 2 edges');
  const rebate = { kind: 'rebate', runs: 'up', count: 1, depthM: 0.009, widthM: 0.018, stopped: true } as const;
  expect(noteWords(rebate, 'up')).toBe(
    'rebate 9 mm deep × 18 mm wide along the length, 1 edge, not run out at both ends',
  );
});

test('bevels are said edge by edge, corners to a tenth of a millimetre', () => {
  const build = buildOf(leaning);
  const side = build.panels.find(({ id }) => id === 'left')!;
  expect(bevelWords(side).join()).toMatch(/inner face the larger, at the edge to (front|back)/);
  const front = build.lines.find(({ panels }) => panels[0] === 'front')!;
  const corners = /corners of the outer face at (.*) mm/.exec(lineNotes(front, build).join('; '))?.[1];
  expect(corners?.split(/, | \| /)).toHaveLength(8);
  expect(corners).toMatch(/^[\d., |]*$/);
  for (const figure of corners!.split(/, | \| /)) expect(figure).toMatch(/^\d+(\.\d)?$/);
  expect(bevelWords(buildOf(demo).panels[0]!)).toEqual([]);
});

test('the copied list has every piece: marks, sizes and counts times the cabinets', () => {
  const build = buildOf(braced);
  const rows = cutListCsv(build, 3).trim().split('\n').slice(1);
  expect(rows).toHaveLength(build.lines.length);
  const pieces = rows.map((row) => Number(/^[A-Z]+,[^,]*,(\d+),/.exec(row)?.[1]));
  expect(pieces.reduce((sum, n) => sum + n, 0)).toBe(3 * build.panels.length);
  const text = cutListText(build, 1);
  expect(text).toContain('cut list for 1 cabinet\n');
  for (const { length, width } of build.lines) expect(text).toContain(`${length.millimetres} × ${width.millimetres}`);
});

test('a fitting is a guess until it is stated, field by field', () => {
  const bare: Project = { ...demo, drivers: demo.drivers.map((driver) => ({ ...driver, fitting: null })) };
  const { guess, open } = guessedFittings(bare).get('woofer')!;
  expect(open.has('cutOutDiameterM')).toBe(true);
  const stated: Project = {
    ...bare,
    drivers: bare.drivers.map((driver) =>
      driver.id === 'woofer' ? { ...driver, fitting: { ...guess, cutOutDiameterM: 0.19 } } : driver,
    ),
  };
  const after = guessedFittings(stated).get('woofer')!.open;
  expect(after.has('cutOutDiameterM')).toBe(false);
  expect(after.has('magnetDiameterM')).toBe(true);
  expect(buildOf(bare).guessed.has('woofer')).toBe(true);
});

describe('boards', () => {
  test('are grouped by thickness, and every piece is in one group', () => {
    const build = buildOf(braced);
    expect(boardGroups(build).map(({ millimetres }) => millimetres)).toEqual(['18', '25', '15']);
    const job = cuttingJobOf(build, 2);
    const pieces = job.groups.flat().reduce((sum, { count }) => sum + count, 0);
    expect(pieces).toBe(2 * build.panels.length);
    expect(job.groups.flat().every(({ allowRotation }) => !allowRotation)).toBe(true);
  });
  test('every part comes out of the cuts once, by its mark', () => {
    const build = buildOf(demo);
    const { groups, stock, kerfM, trimM } = cuttingJobOf(build, 2);
    const layout = layOutSheets(groups[0]!, [stock], { kerfM, trimM, seed: 1, effort: 50 });
    if (!layout.ok) throw new Error('no layout');
    for (const plan of layout.value.sheets) {
      const mark = (partId: string): string => build.lines.find((line) => line.partId === partId)!.mark;
      const finished = [...pieceNames(plan, kerfM, mark).values()].filter((name) => name.endsWith('finished'));
      const wanted = plan.parts.map(({ partId }) => `${mark(partId)}, finished`);
      expect(finished.sort()).toEqual(wanted.sort());
    }
  });
  test.each([
    ['x', 1.003, 0.3],
    ['y', 0.5, 0.603],
  ])('a part that is the rest of a cut across %s is known too', (_, lengthM, widthM) => {
    const part = { id: 'p', lengthM: 0.5, widthM: 0.3, count: 2, grain: 'any', allowRotation: false } as const;
    const layout = layOutSheets([part], [{ lengthM, widthM, count: 1 }], {
      kerfM: 0.003,
      trimM: 0,
      seed: 1,
      effort: 0,
    });
    if (!layout.ok) throw new Error('no layout');
    const names = [...pieceNames(layout.value.sheets[0]!, 0.003, () => 'P').values()];
    expect(names).toEqual(['the board', 'P, finished', 'P, finished']);
  });
  test('a label shrinks to its mark, and stands upright on an upright part', () => {
    expect(partLabel('A', 'side', '940 × 340', 940, 340, 25)).toEqual({
      lines: ['A side', '940 × 340'],
      upright: false,
    });
    expect(partLabel('A', 'side', '940 × 340', 340, 940, 25).upright).toBe(true);
    expect(partLabel('A', 'a side with a long name', '94 × 34', 94, 34, 25)).toEqual({ lines: ['A'], upright: false });
    expect(partLabel('A', 'side', '34 × 94', 34, 94, 25)).toEqual({ lines: ['A'], upright: false });
  });
});
