import { INCH_M } from '../../units/exactInch.ts';
import { formatInchFraction } from '../../units/formatInchFraction.ts';
import type { SheetPart } from '../sheets/index.ts';
import type { Panel } from './panel.ts';

/** A length as the workshop reads it: millimetres to a tenth, and inches to the nearest 1/32 with what that adds or takes. */
export interface WorkshopLength {
  readonly lengthM: number;
  readonly millimetres: string;
  readonly inches: string;
  /** Shown inches less the true length, m; up to 0.4 mm either way. */
  readonly inchErrorM: number;
}

export type EdgeNote =
  | {
      readonly kind: 'mitre' | 'bevel';
      readonly runs: 'across' | 'up';
      readonly count: number;
      readonly angleDeg: number;
    }
  | {
      readonly kind: 'rebate';
      readonly runs: 'across' | 'up';
      readonly count: number;
      readonly depthM: number;
      readonly widthM: number;
      readonly stopped: boolean;
    };

export interface CutListLine {
  readonly panels: readonly string[];
  readonly count: number;
  readonly length: WorkshopLength;
  readonly width: WorkshopLength;
  readonly thickness: WorkshopLength;
  readonly grain: Panel['grain'];
  readonly shape: Panel['shape'];
  readonly notes: readonly EdgeNote[];
}

/** Example: workshopLength(0.25).inches === '9 27/32', which is 0.03 mm more. */
export function workshopLength(lengthM: number): WorkshopLength {
  const thirtySeconds = Math.round((lengthM / INCH_M) * 32);
  return {
    lengthM,
    millimetres: (Math.round(lengthM * 1e4) / 10).toString(),
    inches: formatInchFraction(lengthM, 32).number,
    inchErrorM: (thirtySeconds * INCH_M) / 32 - lengthM,
  };
}

const tenthMm = (m: number): number => Math.round(m * 1e4);
const tenthDeg = (rad: number): number => Math.round(((rad * 180) / Math.PI) * 10) / 10;

function notesOf({ edges, rebates }: Panel): EdgeNote[] {
  const single: EdgeNote[] = [
    ...edges
      .filter(({ bevelRad }) => tenthDeg(bevelRad) !== 0)
      .map(
        ({ joint, runs, bevelRad }): EdgeNote => ({
          kind: joint === 'mitre' ? 'mitre' : 'bevel',
          runs,
          count: 1,
          angleDeg: tenthDeg(bevelRad),
        }),
      ),
    ...rebates.map(({ meets, depthM, widthM, stopped }): EdgeNote => {
      const runs = edges.find((edge) => edge.meets === meets)!.runs;
      return { kind: 'rebate', runs, count: 1, depthM: tenthMm(depthM) / 1e4, widthM: tenthMm(widthM) / 1e4, stopped };
    }),
  ];
  const byText = new Map<string, EdgeNote>();
  for (const note of single) {
    const text = JSON.stringify(note);
    const known = byText.get(text);
    byText.set(text, known === undefined ? note : { ...known, count: known.count + 1 });
  }
  return [...byText].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, note]) => note);
}

/** The polygon as it may also be read with the board turned over, so that a left and a right side are one line. */
const shapeKey = (points: Panel['outerFace'], widthM: number): string => {
  const key = (mirrored: boolean) =>
    points
      .map(([x, y]) => `${tenthMm(mirrored ? widthM - x : x)},${tenthMm(y)}`)
      .sort()
      .join(' ');
  return [key(false), key(true)].sort()[0]!;
};

/**
 * The cut list: equal panels in one line (a panel and its mirror image count as equal, cut-outs do not matter), the largest first.
 * Sizes are finished sizes of the smallest rectangle, joints included. Source of the inch: exact, 1959 agreement.
 */
export function cutList(panels: readonly Panel[]): readonly CutListLine[] {
  const lines = new Map<string, { panel: Panel; ids: string[]; notes: EdgeNote[] }>();
  for (const panel of panels) {
    const notes = notesOf(panel);
    const acrossM = Math.max(...panel.outerFace.map(([x]) => x), ...panel.innerFace.map(([x]) => x));
    const key = JSON.stringify([
      [panel.lengthM, panel.widthM, panel.thicknessM].map(tenthMm),
      panel.grain,
      notes,
      shapeKey(panel.outerFace, acrossM),
    ]);
    const known = lines.get(key);
    if (known === undefined) lines.set(key, { panel, ids: [panel.id], notes });
    else known.ids.push(panel.id);
  }
  return [...lines.values()]
    .sort((a, b) => b.panel.lengthM * b.panel.widthM - a.panel.lengthM * a.panel.widthM)
    .map(({ panel, ids, notes }) => ({
      panels: ids,
      count: ids.length,
      length: workshopLength(panel.lengthM),
      width: workshopLength(panel.widthM),
      thickness: workshopLength(panel.thicknessM),
      grain: panel.grain,
      shape: panel.shape,
      notes,
    }));
}

/** The lines of one thickness as parts for `layOutSheets`; `copies` cabinets. Length lies along the grain. */
export const sheetParts = (
  lines: readonly CutListLine[],
  thicknessM: number,
  copies: number,
  allowRotation: boolean,
): SheetPart[] =>
  lines
    .filter(({ thickness }) => tenthMm(thickness.lengthM) === tenthMm(thicknessM))
    .map(({ panels, count, length, width }) => ({
      id: panels.join(' + '),
      lengthM: length.lengthM,
      widthM: width.lengthM,
      count: count * copies,
      grain: allowRotation ? 'any' : 'along-length',
      allowRotation,
    }));
