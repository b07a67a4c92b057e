import { layOutSheets, type SheetPart, stripsAcross } from '../../../src/core/build/sheets/index.ts';
import type { Adapter, Json } from '../adapter.ts';
import { asNumber, asNumbers, ratio, scaled } from '../convert.ts';

const metres = (mm: unknown): number => scaled(asNumber(mm), -3);
const asList = (list: Json | undefined): readonly Json[] => {
  if (!Array.isArray(list)) throw new TypeError('expected a list');
  return list;
};
const asPart =
  (grainLocked: boolean) =>
  (size: Json, place: number): SheetPart => {
    const [lengthMm, widthMm, count] = asNumbers(size);
    return {
      id: String(place),
      lengthM: metres(lengthMm),
      widthM: metres(widthMm),
      count: count ?? 1,
      grain: grainLocked ? 'along-length' : 'any',
      allowRotation: !grainLocked,
    };
  };

const layout: Adapter = {
  family: 'cutting',
  requires: ['sheet_mm', 'kerf_mm', 'parts_mm'],
  allows: ['grain_locked', 'trim_mm'],
  run: ({ sheet_mm, kerf_mm, parts_mm, grain_locked, trim_mm }) => {
    const [lengthMm, widthMm] = asNumbers(sheet_mm);
    const sheet = { lengthM: metres(lengthMm), widthM: metres(widthMm), count: 'unlimited' as const };
    const found = layOutSheets(asList(parts_mm).map(asPart(grain_locked === 1 || grain_locked === true)), [sheet], {
      kerfM: metres(kerf_mm),
      trimM: trim_mm === undefined ? 0 : metres(trim_mm),
      seed: 1,
      effort: 4000,
    });
    if (!found.ok) throw new Error(found.problems.map(({ code }) => code).join());
    const { sheets, partsAreaM2, sheetAreaM2 } = found.value;
    return { optimum_sheets: sheets.length, parts_area_fraction_of_sheet: ratio(partsAreaM2, sheetAreaM2[0]!) };
  },
};

const strips: Adapter = {
  family: 'cutting',
  requires: ['sheet_width_mm', 'strip_width_mm', 'kerf_mm'],
  allows: ['trim_mm'],
  run: ({ sheet_width_mm, strip_width_mm, kerf_mm, trim_mm }) => {
    const count = (stripMm: unknown): number =>
      stripsAcross(
        metres(sheet_width_mm),
        metres(stripMm),
        metres(kerf_mm),
        trim_mm === undefined ? 0 : metres(trim_mm),
      );
    return { count: Array.isArray(strip_width_mm) ? strip_width_mm.map(count) : count(strip_width_mm) };
  },
};

export const adapters: readonly Adapter[] = [layout, strips];
