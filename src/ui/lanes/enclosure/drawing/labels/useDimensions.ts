import { useWorkbench } from '../../../../useWorkbench.ts';
import type { Way } from '../../../../waysInOrder.ts';
import { useRemPx } from '../../../useRemPx.ts';
import { type Box, type CabinetDrawing, onFront } from '../cabinetDrawing.ts';
import { faultBoxes } from '../marks/faultBoxes.ts';
import { type Fault, useFaults } from '../marks/useFaults.ts';
import { bodiesInSide } from './bodiesInSide.ts';
import { dimensionsOf } from './dimensionsOf.ts';
import { type PlacedDimension, placeDimensions } from './placeDimensions.ts';
import { boxAbout, placeLabels } from './placeLabels.ts';

const MARK_PX = 26;
/** Width of the words below a section. */
const CAPTION_PX = 150;

export interface Dimensions {
  readonly placed: readonly PlacedDimension[];
  readonly outlines: readonly { readonly fault: Fault; readonly box: Box }[];
  readonly marks: readonly { readonly fault: Fault; readonly box: Box }[];
  /** All boxes that are taken, for what looks for a place after them. */
  readonly taken: readonly Box[];
}

/** Places for the values and the marks of the drawing, none over another, so far as there is room. */
export function useDimensions(drawing: CabinetDrawing, ways: readonly Way[]): Dimensions {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const axisM = useWorkbench((s) => s.project.listening.heightM - s.project.listening.standHeightM);
  const selected = useWorkbench((s) => (s.selection?.kind === 'speaker' ? s.selection.id : null));
  const system = useWorkbench((s) => s.settings.units);
  const faults = useFaults();
  const typeScale = useRemPx() / 16;
  const ears: Box = {
    leftPx: drawing.front.leftPx + drawing.front.widthPx + 10,
    topPx: onFront(drawing, 0, Math.min(enclosure.heightM, Math.max(0, axisM))).yPx - 9 * typeScale,
    widthPx: 40 * typeScale,
    heightPx: 18 * typeScale,
  };
  const { front, section } = drawing;
  const words = [
    ears,
    boxAbout(front.leftPx + front.widthPx / 2, front.topPx - 15, 30 * typeScale, 16 * typeScale),
    ...(section
      ? [
          boxAbout(
            section.leftPx + section.widthPx / 2,
            section.topPx + section.heightPx + 14,
            CAPTION_PX * typeScale,
            18,
          ),
        ]
      : []),
  ];
  const fields = dimensionsOf(drawing, enclosure, ways, selected, typeScale);
  const side = drawing.side ? { side: drawing.side, pxPerM: drawing.pxPerM } : null;
  const bodies = side ? bodiesInSide(side, enclosure, ways) : [];
  const placed = placeDimensions(fields, words, bodies, drawing.widthPx, system, typeScale);
  const boxes = faults.map((fault) => ({ fault, ...faultBoxes(fault, drawing, enclosure, ways) }));
  const used = [...words, ...placed.map(({ box }) => box)];
  const marked = placeLabels(
    boxes.map(({ fault, front, side }) => ({
      key: `${fault.kind} ${fault.id}`,
      must: true,
      options: [side, front].flatMap((box) => (box ? about(box).map((place) => ({ fault, box: place })) : [])),
    })),
    used,
  );
  const marks = [...marked.values()];
  return {
    placed,
    outlines: boxes.flatMap(({ fault, front, side }) => [front, side].flatMap((box) => (box ? [{ fault, box }] : []))),
    marks,
    taken: [...used, ...marks.map(({ box }) => box)],
  };
}

/** Places for a mark round a thing: behind it, above, below, in it. */
function about({ leftPx, topPx, widthPx, heightPx }: Box): Box[] {
  const [right, middle] = [leftPx + widthPx + 2, topPx + heightPx / 2 - MARK_PX / 2];
  const across = leftPx + widthPx / 2 - MARK_PX / 2;
  return [
    [right, middle],
    [right, topPx],
    [right, topPx + heightPx - MARK_PX],
    [across, topPx - MARK_PX - 1],
    [across, topPx + heightPx + 1],
    [across, middle],
  ].map(([x, y]) => ({ leftPx: x!, topPx: y!, widthPx: MARK_PX, heightPx: MARK_PX }));
}
