import { describe, expect, it, test } from 'vitest';
import { chamberOfSize } from '../../../src/core/design/chamberOfSize.ts';
import { sealedWishFor } from '../../../src/core/design/sealedWishFor.ts';
import type { Chamber, Project } from '../../../src/core/document/schema.ts';
import { word } from '../../../src/core/messages/word.ts';
import { grossVolumeM3 } from '../../../src/core/speaker/chamberVolume.ts';
import { succeeded } from '../circuit/solved.ts';
import { demoProject } from './demoProject.ts';

const room = demoProject('reading-room');
const chamberOf = ({ enclosure }: Project, id: string): Chamber => {
  const found = enclosure.chambers.find((chamber) => chamber.id === id);
  if (!found) throw new Error(`no chamber ${id}`);
  return found;
};
const withVolume = (project: Project, id: string, volume: Chamber['volume']): Project => ({
  ...project,
  enclosure: {
    ...project.enclosure,
    chambers: project.enclosure.chambers.map((chamber) => (chamber.id === id ? { ...chamber, volume } : chamber)),
  },
});
const bounds = (bottomM: number, topM: number): Chamber['volume'] => ({
  kind: 'geometry',
  bottomM,
  topM,
  depthM: null,
});
const { heightM, panelM } = room.enclosure;
/** One chamber alone, from floor to top. */
const alone: Project = {
  ...room,
  enclosure: { ...room.enclosure, chambers: [{ ...chamberOf(room, 'low'), volume: bounds(panelM, heightM - panelM) }] },
};

describe('chamberOfSize', () => {
  it.each([0.9, 1.05])('moves a bound so that the size is %d of the present one', (times) => {
    const chamber = chamberOf(room, 'middle');
    const grossM3 = times * grossVolumeM3(chamber, room.enclosure);
    const { volume, by } = succeeded(chamberOfSize(room, chamber, grossM3));
    expect(by).not.toBe('stated');
    expect(grossVolumeM3({ ...chamber, volume }, room.enclosure)).toBeCloseTo(grossM3, 5);
  });

  const middle = chamberOf(room, 'middle');
  const low = chamberOf(room, 'low');
  const [mid, woofer] = ['middle', 'low'].map((id) => {
    const mount = room.enclosure.mounts.find(({ chamberId }) => chamberId === id);
    if (!mount) throw new Error(`no driver in ${id}`);
    return mount;
  });
  it.each<[string, Project, string, number, RegExp, RegExp]>([
    [
      'a chamber alone meets the cabinet at both ends',
      alone,
      'low',
      1.2,
      /top cannot go above the inside of the cabinet, nor its bottom below the inside of the cabinet\.$/,
      /^Make the cabinet larger, or state the volume as a number\.$/,
    ],
    [
      'the chamber above and the cabinet below',
      room,
      'low',
      2,
      new RegExp(`above where chamber “${middle.name}” begins, nor its bottom below the inside of the cabinet`),
      new RegExp(`^Make the cabinet larger, make chamber “${middle.name}” smaller, or state`),
    ],
    [
      'the cabinet above and the chamber below',
      withVolume(room, 'middle', bounds((middle.volume as { bottomM: number }).bottomM, heightM - panelM)),
      'middle',
      3,
      new RegExp(`above the inside of the cabinet, nor its bottom below where chamber “${low.name}” begins`),
      new RegExp(`make chamber “${low.name}” smaller`),
    ],
    [
      'its own driver, when it is to be small',
      withVolume(room, 'middle', bounds(mid!.yM - 0.05, mid!.yM + 0.05)),
      'middle',
      0.01,
      new RegExp(`below the centre of ${mid!.partId}, nor its bottom above the centre of ${mid!.partId}\\.$`),
      new RegExp(`^Move ${mid!.partId}, or state the volume`),
    ],
    [
      'its port and its driver, when it is to be small',
      withVolume(room, 'low', bounds(0, woofer!.yM + 0.05)),
      'low',
      0.01,
      new RegExp(`below the centre of ${woofer!.partId}, nor its bottom above the centre of the port\\.$`),
      new RegExp(`^Move ${woofer!.partId}, move the port, or state`),
    ],
  ])('says what is in the way: %s', (_, project, id, times, sentence, remedy) => {
    const chamber = chamberOf(project, id);
    const found = chamberOfSize(project, chamber, times * grossVolumeM3(chamber, project.enclosure));
    if (found.ok) throw new Error(`moved: ${JSON.stringify(found.value)}`);
    expect(found.problems.map(({ code, place }) => [code, place.id])).toEqual([['design.no-room', id]]);
    const said = word(found.problems[0]!);
    expect(said.sentence).toMatch(sentence);
    expect(said.remedy).toMatch(remedy);
  });

  it('has no space to give between panels that meet', () => {
    const thick: Project = { ...room, enclosure: { ...room.enclosure, panelM: room.enclosure.widthM / 2 } };
    const found = chamberOfSize(thick, chamberOf(thick, 'low'), 0.02);
    expect(found.ok ? [] : found.problems.map(({ code }) => code)).toEqual(['speaker.no-inside']);
  });
});

test('a sealed wish hands the reason on', () => {
  const found = succeeded(sealedWishFor(room, chamberOf(room, 'middle'), 0.45) ?? { ok: false, problems: [] });
  expect(found.sized.ok ? '' : word(found.sized.problems[0]!).sentence).toContain(chamberOf(room, 'low').name);
});
