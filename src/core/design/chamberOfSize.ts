import { thingName } from '../document/describe/thingName.ts';
import { chamberHeights, clearHeights, sliceM2, spaceBetweenM3 } from '../document/insideSpace.ts';
import type { Chamber, Enclosure, Project } from '../document/schema.ts';
import { fail, problem, type Result, succeed } from '../messages/problem.ts';
import { grossVolumeM3 } from '../speaker/chamberVolume.ts';

export interface SizedChamber {
  readonly volume: Chamber['volume'];
  /** What changes: the stated number, or one of the bounds. */
  readonly by: 'stated' | 'top' | 'bottom';
}

/** What a bound of a chamber meets. */
interface Stop {
  readonly kind: 'cabinet' | 'chamber' | 'driver' | 'port';
  readonly name: string;
}

/** Bounds land on 10 µm, so that even a low chamber keeps its volume within 0.1 %. */
const STEPS_PER_M = 1e5;
const CLOSE_M = 1e-9;
/** Newton's steps; two suffice for the slightest lean. */
const STEPS = 8;
const CABINET: Stop = { kind: 'cabinet', name: '' };

/**
 * A chamber's volume for a wished gross size, m³: the number itself where it is stated, else its top moved, or its bottom where
 * the top cannot. A bound stays inside the cabinet, one panel away from the chambers above and below, and does not pass the
 * centre of a driver or a port that is inside now. Where neither can move so far, the Problem `design.no-room` says what each of them
 * meets; `speaker.no-inside` where the panels leave no space.
 * @example chamberOfSize(project, chamber, 0.04)
 */
export function chamberOfSize(project: Project, chamber: Chamber, grossM3: number): Result<SizedChamber> {
  const { enclosure } = project;
  const { volume } = chamber;
  if (volume.kind === 'stated') return succeed({ volume: { kind: 'stated', grossM3 }, by: 'stated' });
  const { panelM, widthM, heightM, depthM } = enclosure;
  const { bottomM, topM } = chamberHeights(chamber, enclosure);
  if (!(sliceM2(enclosure, bottomM, volume.depthM) > 0)) {
    return fail(problem('speaker.no-inside', { kind: 'field', field: 'panelM' }, { panelM, widthM, heightM, depthM }));
  }
  const { floor, ceiling, inside } = surroundings(project, chamber, bottomM, topM);

  const movedTopM = rounded(bottomM + tallM(enclosure, bottomM, 1, volume.depthM, grossM3));
  const topMeets =
    movedTopM > ceiling.yM + CLOSE_M ? ceiling.stop : highest(inside.filter(({ yM }) => yM > movedTopM))?.stop;
  if (topMeets === undefined) return succeed({ volume: { ...volume, topM: movedTopM }, by: 'top' });
  const movedBottomM = rounded(topM - tallM(enclosure, topM, -1, volume.depthM, grossM3));
  const bottomMeets =
    movedBottomM < floor.yM - CLOSE_M ? floor.stop : lowest(inside.filter(({ yM }) => yM < movedBottomM))?.stop;
  if (bottomMeets === undefined) return succeed({ volume: { ...volume, bottomM: movedBottomM }, by: 'bottom' });

  const values = {
    grossM3,
    presentM3: grossVolumeM3(chamber, enclosure),
    name: thingName('chamber', chamber.id, project) ?? chamber.name,
    topMeets: topMeets.kind,
    topName: topMeets.name,
    bottomMeets: bottomMeets.kind,
    bottomName: bottomMeets.name,
  };
  return fail(problem('design.no-room', { kind: 'chamber', id: chamber.id }, values));
}

/** Height that holds a volume from a bound upwards (1) or downwards (-1), m: by steps of the slice's own area, which changes little. */
function tallM(enclosure: Enclosure, fromM: number, way: 1 | -1, depthM: number | null, grossM3: number): number {
  let tall = 0;
  for (let step = 0; step < STEPS; step++) {
    const held =
      way > 0
        ? spaceBetweenM3(enclosure, fromM, fromM + tall, depthM)
        : spaceBetweenM3(enclosure, fromM - tall, fromM, depthM);
    const slice = sliceM2(enclosure, fromM + way * tall, depthM);
    // A front that leans so far that it meets the back holds no more.
    if (!(slice > 0)) return Number.POSITIVE_INFINITY;
    tall += (grossM3 - held) / slice;
  }
  return tall;
}

interface At {
  readonly yM: number;
  readonly stop: Stop;
}

/** How far the bounds can go outwards, and what stands between them now. */
function surroundings(project: Project, chamber: Chamber, bottomM: number, topM: number) {
  const { panelM, chambers, mounts, ports } = project.enclosure;
  const clear = clearHeights(project.enclosure);
  const floors: At[] = [{ yM: clear.bottomM, stop: CABINET }];
  const ceilings: At[] = [{ yM: clear.topM, stop: CABINET }];
  for (const { id, volume } of chambers) {
    if (id === chamber.id || volume.kind === 'stated') continue;
    const stop: Stop = { kind: 'chamber', name: thingName('chamber', id, project) ?? id };
    if (volume.topM <= bottomM) floors.push({ yM: volume.topM + panelM, stop });
    if (volume.bottomM >= topM) ceilings.push({ yM: volume.bottomM - panelM, stop });
  }
  const within = ({ chamberId, yM }: { readonly chamberId: string | null; readonly yM: number }) =>
    chamberId === chamber.id && yM >= bottomM && yM <= topM;
  const inside: At[] = [
    ...mounts.filter(within).map(({ partId, yM }) => ({ yM, stop: { kind: 'driver' as const, name: partId } })),
    ...ports
      .filter(within)
      .map(({ id, yM }) => ({ yM, stop: { kind: 'port' as const, name: thingName('port', id, project) ?? id } })),
  ];
  return { floor: highest(floors)!, ceiling: lowest(ceilings)!, inside };
}

const highest = (all: readonly At[]): At | undefined =>
  all.reduce<At | undefined>((best, one) => (best === undefined || one.yM > best.yM ? one : best), undefined);
const lowest = (all: readonly At[]): At | undefined =>
  all.reduce<At | undefined>((best, one) => (best === undefined || one.yM < best.yM ? one : best), undefined);

const rounded = (m: number): number => Math.round(m * STEPS_PER_M) / STEPS_PER_M;
