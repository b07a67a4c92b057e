import { sheetParts } from '../../../core/build/panels/index.ts';
import type { CuttingJob } from '../../../state/cutSheets.ts';
import type { Build } from '../read/readBuild.ts';

const EFFORT = 2000;
const SEED = 1;

/** Boards of one thickness that have to be bought. */
export interface BoardGroup {
  readonly thicknessM: number;
  readonly millimetres: string;
}

/** The thicknesses of a cut list, the most used first. */
export function boardGroups({ lines }: Build): readonly BoardGroup[] {
  const groups = new Map<string, BoardGroup & { areaM2: number }>();
  for (const { thickness, length, width, count } of lines) {
    const { millimetres, lengthM } = thickness;
    const group = groups.get(millimetres) ?? { thicknessM: lengthM, millimetres, areaM2: 0 };
    groups.set(millimetres, { ...group, areaM2: group.areaM2 + count * length.lengthM * width.lengthM });
  }
  return [...groups.values()].sort((a, b) => b.areaM2 - a.areaM2);
}

/** What has to be laid out for so many cabinets. */
export function cuttingJobOf(build: Build, cabinets: number): CuttingJob {
  const { lengthM, widthM, kerfM, trimM, grained } = build.project.enclosure.wood.stock;
  return {
    groups: boardGroups(build).map(({ thicknessM }) => sheetParts(build.lines, thicknessM, cabinets, !grained)),
    stock: { lengthM, widthM, count: 'unlimited' },
    kerfM,
    trimM,
    seed: SEED,
    effort: EFFORT,
  };
}
