import { describe, expect, it } from 'vitest';
import { cabinetOf, unusedSpace } from '../../../../src/core/build/document/index.ts';
import { panelsOf, volumesOf } from '../../../../src/core/build/index.ts';
import { plainWood } from '../../../../src/core/document/schema/plainWood.ts';
import type { Project, Wood } from '../../../../src/core/document/schema.ts';
import { newProject } from '../../../../src/core/document/start/newProject.ts';
import { chamberVolume } from '../../../../src/core/speaker/chamberVolume.ts';
import { demoProject } from '../../design/demoProject.ts';

const read = (project: Project) => {
  const result = cabinetOf(project);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const withWood = (project: Project, changes: Partial<Wood>): Project => ({
  ...project,
  enclosure: { ...project.enclosure, wood: { ...plainWood, ...changes } },
});
const rooms = (['reading-room', 'kitchen-shelf', 'port-lesson'] as const).map(
  (name) => [name, demoProject(name)] as const,
);

/** Net volumes chamber by chamber, by the solid geometry of the panels and by the document's own formulas. */
function expectSameVolumes(project: Project): void {
  const { cabinet } = read(project);
  const volumes = volumesOf(cabinet);
  if (!volumes.ok) throw new Error(JSON.stringify(volumes.problems));
  for (const chamber of project.enclosure.chambers) {
    if (chamber.volume.kind === 'stated') continue;
    const own = chamberVolume(project, chamber);
    const wood = volumes.value.chambers.find(
      ({ chamberId }) => chamberId === chamber.id || volumes.value.chambers.length === 1,
    )!;
    expect(wood.grossM3 / own.grossM3).toBeCloseTo(1, 6);
    expect(Math.abs(wood.netM3 / own.netM3 - 1)).toBeLessThan(1e-3);
  }
}

describe('cabinetOf', () => {
  it.each(rooms)(
    'cuts %s so that the panels and the air make up the whole, and the air is what the design counts on',
    (_, project) => {
      const { cabinet } = read(project);
      const panels = panelsOf(cabinet);
      const volumes = volumesOf(cabinet);
      if (!panels.ok || !volumes.ok) throw new Error('not cut');
      const woodM3 = panels.value.filter(({ kind }) => kind === 'wall').reduce((sum, panel) => sum + panel.woodM3, 0);
      expect((woodM3 + volumes.value.innerM3) / volumes.value.outerM3).toBeCloseTo(1, 9);
      expectSameVolumes(project);
    },
  );

  it('keeps the volumes of leaning, narrowing, braced cabinets with walls of their own', () => {
    for (const changes of [
      { frontLeanDeg: 4 },
      { backWidthM: 0.19 },
      { frontM: 0.025, backM: 0.012, topM: 0.022 },
      { frontLeanDeg: 3, backWidthM: 0.18, leftM: 0.015 },
      { joint: 'mitre' },
      { joint: 'rebate', rebateM: 0.006 },
      {
        braces: [
          { id: 'b1', chamberId: 'chamber-1', lies: 'level', atM: 0.1, thicknessM: 0.012, openShare: 0.4 },
          { id: 'b2', chamberId: 'chamber-1', lies: 'across', atM: 0.11, thicknessM: 0.012, openShare: 0.6 },
        ],
      },
      { board: { chamberId: 'chamber-1', widthM: 0.1, heightM: 0.02, depthM: 0.15 } },
    ] satisfies Partial<Wood>[]) {
      const start = newProject();
      const chamber = start.enclosure.chambers[0]!;
      // Bounds at the panels whatever these are.
      const filled = {
        ...start,
        enclosure: {
          ...start.enclosure,
          chambers: [{ ...chamber, volume: { kind: 'geometry', bottomM: 0.001, topM: 0.319, depthM: null } as const }],
        },
      };
      if ('braces' in changes) {
        // Two braces that cross share a little wood, which each counts for itself.
        expectSameVolumes(withWood(filled, { braces: [changes.braces[0]!] }));
        expectSameVolumes(withWood(filled, { braces: [changes.braces[1]!] }));
      } else expectSameVolumes(withWood(filled, changes));
    }
  });

  it('names what the document does not say', () => {
    const found = read(demoProject('kitchen-shelf'));
    expect(found.guessedCutOuts.length).toBeGreaterThan(0);
    const { enclosure } = demoProject('reading-room');
    const stated = { ...demoProject('reading-room') };
    const asStated = {
      ...stated,
      enclosure: {
        ...enclosure,
        chambers: enclosure.chambers.map((chamber) => ({
          ...chamber,
          volume: { kind: 'stated' as const, grossM3: 0.01 },
        })),
      },
    };
    expect(read(asStated).placeless).toEqual(enclosure.chambers.map(({ id }) => id));
    expect(read(asStated).cabinet.dividers).toEqual([]);
  });

  it('parts off what no chamber uses, and refuses chambers that overlap', () => {
    const start = newProject();
    const chamber = start.enclosure.chambers[0]!;
    const withChambers = (...bounds: (readonly [number, number, number | null])[]): Project => ({
      ...start,
      enclosure: {
        ...start.enclosure,
        chambers: bounds.map(([bottomM, topM, depthM], i) => ({
          ...chamber,
          id: `chamber-${i + 1}`,
          volume: { kind: 'geometry', bottomM, topM, depthM },
        })),
      },
    });
    const names = (project: Project) => {
      const volumes = volumesOf(read(project).cabinet);
      if (!volumes.ok) throw new Error(JSON.stringify(volumes.problems));
      return volumes.value.chambers.map(({ chamberId }) => chamberId).sort();
    };
    expect(names(withChambers([0.018, 0.15, null], [0.168, 0.302, null]))).toEqual(['chamber-1', 'chamber-2']);
    expect(names(withChambers([0.018, 0.1, null], [0.2, 0.302, null]))).toEqual([
      'chamber-1',
      'chamber-2',
      unusedSpace(1),
    ]);
    expect(names(withChambers([0.06, 0.2, 0.1]))).toEqual([
      'chamber-1',
      unusedSpace(1),
      unusedSpace(2),
      unusedSpace(3),
    ]);
    const crossed = cabinetOf(withChambers([0.018, 0.2, null], [0.15, 0.302, null]));
    expect(crossed.ok ? [] : crossed.problems.map(({ code }) => code)).toEqual(['build.chambers-overlap']);
  });
});
