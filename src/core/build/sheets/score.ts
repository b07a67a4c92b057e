import type { Field } from './sawGrid.ts';
import { type OpenSheet, stagesOf } from './slot.ts';

export interface Score {
  readonly sheets: number;
  readonly sheetArea: number;
  readonly largestFree: number;
  readonly stages: number;
}

/** What a layout is judged by; `kerf` on the saw's grid, which a free rectangle loses. */
export const scoreOf = (sheets: readonly OpenSheet[], fields: readonly Field[], kerf: number): Score => ({
  sheets: sheets.length,
  sheetArea: sheets.reduce((sum, { field }) => sum + fields[field]!.w * fields[field]!.h, 0),
  largestFree: Math.max(
    0,
    ...sheets.flatMap(({ free }) => free.map(({ w, h }) => Math.max(0, w - kerf) * Math.max(0, h - kerf))),
  ),
  stages: sheets.reduce((sum, { root }) => sum + stagesOf(root), 0),
});

/** Fewest sheets, then least sheet area, then the largest single off-cut, then fewest stages of cutting. Below 0: a is better. */
export const compareScores = (a: Score, b: Score): number =>
  a.sheets - b.sheets || a.sheetArea - b.sheetArea || b.largestFree - a.largestFree || a.stages - b.stages;
