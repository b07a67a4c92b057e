import type { Project } from '../../../core/document/schema.ts';
import { formatQuantity, quantityText } from '../../../core/units/formatQuantity.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { type LineStyle, wayStyle } from '../../../plot/index.ts';
import type { Ghost } from '../../../state/workbench.ts';
import { radiationWords } from '../../radiationWords.ts';
import { waysInOrder } from '../../waysInOrder.ts';
import type { ViewInput } from '../view.ts';

/** Name and style of the way that a speaker part is; of a part that the document no longer has, its id. */
export function wayOf(project: Project, speakerId: string): { readonly name: string; readonly style: LineStyle } {
  const way = waysInOrder(project).find((candidate) => candidate.speakerId === speakerId);
  return way ? { name: way.name, style: wayStyle(way.index) } : { name: speakerId, style: wayStyle(5) };
}

/** What was computed for each speaker, in lane order from the bottom up: the topmost lane is painted last and read first. */
export function fromBottomUp<T extends { readonly partId: string }>(
  project: Project,
  speakers: readonly T[],
): readonly T[] {
  const order = waysInOrder(project).map((way) => way.speakerId);
  return [...speakers].sort((a, b) => order.indexOf(b.partId) - order.indexOf(a.partId));
}

/** Name of a kept state in a picture, with its drive, distance and angles where they are not the present ones. */
export function ghostName({ project, settings }: ViewInput, ghost: Ghost): string {
  const kept = project.snapshots.find((snapshot) => snapshot.id === ghost.id);
  const differs: string[] = [];
  if (kept && kept.chain.driveV !== project.chain.driveV) differs.push(`${short(kept.chain.driveV)} V`);
  if (kept && kept.listening.distanceM !== project.listening.distanceM)
    differs.push(lengthText(kept.listening.distanceM, settings.units));
  const [before, now] = [kept?.listening, project.listening];
  if (before && (before.horizontalDeg !== now.horizontalDeg || before.verticalDeg !== now.verticalDeg)) {
    differs.push(`${short(before.horizontalDeg)}°, ${short(before.verticalDeg)}° up`);
  }
  return differs.length > 0 ? `kept: ${ghost.name} (${differs.join(', ')})` : `kept: ${ghost.name}`;
}

/** A number as short as it can be told: at most three significant digits. */
export const short = (value: number): string => String(Number(value.toPrecision(3))).replace('-', '−');

const lengthText = (metres: number, units: UnitSystem): string =>
  quantityText(formatQuantity(metres, 'length', units, 3));

/** Where and at which drive everything is shown: `at 2.5 m for 2.83 V`, with angles where they are set, and the radiation view. */
export const conditions = (input: ViewInput): string =>
  listenedTo(input, ` for ${short(input.project.chain.driveV)} V`);

/** The same without the drive, for what does not depend on it: `at 2.5 m, on its own baffle`. */
export function listenedTo({ project, settings }: ViewInput, drive = ''): string {
  const { distanceM, horizontalDeg, verticalDeg, radiation } = project.listening;
  const angles = [
    horizontalDeg !== 0 ? `${short(Math.abs(horizontalDeg))}° ${horizontalDeg > 0 ? 'right' : 'left'}` : '',
    verticalDeg !== 0 ? `${short(Math.abs(verticalDeg))}° ${verticalDeg > 0 ? 'up' : 'down'}` : '',
  ].filter((text) => text !== '');
  const place = `at ${lengthText(distanceM, settings.units)}${drive}`;
  return [place, ...angles, radiationWords[radiation]].join(', ');
}

/** Greatest value of curves between two frequencies, null where there is none. */
export function greatestOf(
  curves: readonly { readonly frequenciesHz: ArrayLike<number>; readonly values: ArrayLike<number> }[],
  fromHz = 20,
  toHz = 20000,
): number | null {
  let greatest: number | null = null;
  for (const { frequenciesHz, values } of curves) {
    for (let index = 0; index < values.length; index++) {
      const hz = frequenciesHz[index] ?? 0;
      const value = values[index] ?? Number.NaN;
      if (hz >= fromHz && hz <= toHz && Number.isFinite(value) && (greatest === null || value > greatest))
        greatest = value;
    }
  }
  return greatest;
}
