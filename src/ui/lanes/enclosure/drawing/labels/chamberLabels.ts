import type { KeyFigures } from '../../../../../core/design/evaluation.ts';
import type { Enclosure } from '../../../../../core/document/schema.ts';
import type { UnitSystem } from '../../../../../core/units/quantityKind.ts';
import { figureText } from '../../../figureText.ts';
import { tuningWords } from '../../chamberWords.ts';
import { type SideChamber, sideChambers } from '../../sideChambers.ts';
import { type Box, onSide, type SideDrawing } from '../cabinetDrawing.ts';
import { boxAbout, type LabelWish } from './placeLabels.ts';

/** What is said of a chamber at one of its places: net volume and, where there is room, its tuning below. */
export interface ChamberLabel {
  readonly volume: string;
  /** In one line or, where that is too long, in two. */
  readonly tuning: readonly string[];
  /** A lead from the chamber to words that stand behind it. */
  readonly leadFromPx: number | null;
}

/** About the width of a character of the volume's bold type, and of the smaller line below it. */
const CHARACTER_PX = 7.4;
const SMALL_CHARACTER_PX = 5.8;
const LINE_PX = 15;
const EDGE_PX = 2;
const LEAD_PX = 16;
/** Places that are tried, as shares of a chamber's height from its top and of its depth from the front. */
const DOWN = [0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.22, 0.78];
const ALONG = [0.6, 0.5, 0.75, 0.35, 0.85];

const NOTHING: readonly string[] = [];
/** "tuned to 33.9 Hz" as "tuned to" and "33.9 Hz": before its last number. */
const inTwo = (text: string): string[] => text.split(/ (?=[^ ]+ [^ ]+$)/);

/** Words for the chambers in the side view, each with the places where they fit between its walls. */
export function chamberLabels(
  drawing: SideDrawing,
  enclosure: Enclosure,
  figures: KeyFigures['chambers'] | undefined,
  system: UnitSystem,
  typeScale: number,
): LabelWish<ChamberLabel>[] {
  const wallM = enclosure.depthM - enclosure.panelM;
  return sideChambers(enclosure).map((chamber) => {
    const figure = figures?.find(({ id }) => id === chamber.id);
    const volume = figure ? figureText(figure.netM3, 'volume', system) : '–';
    // A chamber with nothing stated of it says its volume alone.
    const tuning = figure?.tuningHz || figure?.sealed ? tuningWords(figure, system) : '';
    const inside = boxOf(drawing, chamber.frontM, chamber.backM, chamber);
    const behind = boxOf(drawing, chamber.backM + enclosure.panelM, wallM, chamber);
    const said = [
      ...(tuning === '' ? [] : [[tuning], inTwo(tuning)]).map((lines) => ({ volume: `${volume} net`, tuning: lines })),
      { volume: `${volume} net`, tuning: NOTHING },
      { volume, tuning: NOTHING },
    ];
    const options = said.flatMap((words) => {
      const widthPx =
        Math.max(words.volume.length * CHARACTER_PX, ...words.tuning.map((line) => line.length * SMALL_CHARACTER_PX)) *
          typeScale +
        2;
      const heightPx = (1 + words.tuning.length) * LINE_PX * typeScale;
      const within = fits(inside, widthPx, heightPx).map((box) => ({ ...words, leadFromPx: null, box }));
      const beside = fits(
        { ...behind, leftPx: behind.leftPx + LEAD_PX, widthPx: behind.widthPx - LEAD_PX },
        widthPx,
        heightPx,
      )
        .slice(0, 1)
        .map((box) => ({ ...words, leadFromPx: inside.leftPx + inside.widthPx - 6, box }));
      return [...within, ...beside];
    });
    return { key: `chamber ${chamber.id}`, options };
  });
}

function boxOf(drawing: SideDrawing, frontM: number, backM: number, { bottomM, topM }: SideChamber): Box {
  const a = onSide(drawing, frontM, topM);
  const b = onSide(drawing, backM, bottomM);
  return { leftPx: a.xPx, topPx: a.yPx, widthPx: b.xPx - a.xPx, heightPx: b.yPx - a.yPx };
}

function fits(room: Box, widthPx: number, heightPx: number): Box[] {
  const [spareX, spareY] = [room.widthPx - widthPx - EDGE_PX, room.heightPx - heightPx];
  if (spareX < 0 || spareY < 0) return [];
  const clamp = (value: number, from: number, to: number) => Math.min(to, Math.max(from, value));
  return DOWN.flatMap((down) =>
    ALONG.map((along) =>
      boxAbout(
        room.leftPx + clamp(room.widthPx * along, (widthPx + EDGE_PX) / 2, room.widthPx - (widthPx + EDGE_PX) / 2),
        room.topPx + clamp(room.heightPx * down, heightPx / 2, room.heightPx - heightPx / 2),
        widthPx,
        heightPx,
      ),
    ),
  );
}
