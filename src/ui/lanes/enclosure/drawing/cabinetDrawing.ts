import type { Enclosure } from '../../../../core/document/schema.ts';

export interface Box {
  readonly leftPx: number;
  readonly topPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The views of the cabinet at one scale, in pixels of the drawing. */
export interface CabinetDrawing {
  readonly pxPerM: number;
  readonly front: Box;
  /** null while the section stands in its place. */
  readonly side: Box | null;
  readonly section: Box | null;
  /** Whether there is no room for side view and section at once. */
  readonly switched: boolean;
  /** Whether room is kept for values to the right of the side view. */
  readonly chained: boolean;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** What the side view, or the section, needs of a drawing. */
export interface SideDrawing {
  readonly side: Box;
  readonly pxPerM: number;
}
export interface SectionDrawing {
  readonly section: Box;
  readonly pxPerM: number;
}

export interface DrawingNeeds {
  /** 1 for plain type; margins hold words and grow with them. */
  readonly typeScale: number;
  /** Which of the two is wanted where there is room for one only. */
  readonly wanted: 'side' | 'section';
  /** Whether values stand to the right of the side view, and in a second row below. */
  readonly chained: boolean;
  readonly secondRow: boolean;
}

/** Room around the views for leads, titles and dimension lines. */
const MARGIN_PX = {
  left: 66,
  between: 80,
  right: 20,
  chain: 76,
  top: 34,
  bottom: 52,
  secondRow: 26,
  section: 76,
  above: 30,
};
const LEAST_SCALE_PX_PER_M = 60;
/** A section beside the side view may cost this share of the scale. */
const SCALE_KEPT = 0.93;

const PLAIN: DrawingNeeds = { typeScale: 1, wanted: 'side', chained: false, secondRow: false };

/**
 * Lays front view, side view and section beside each other, as large as the given space allows; without room for three the wanted one
 * of the last two.
 *
 * The views stand at the top left of the space, lead lines coming in from the left; the drawing's own height may be
 * less than the space.
 * @example cabinetDrawing({ widthM: 0.27, heightM: 0.94, depthM: 0.34 }, 480, 460).front.widthPx
 */
export function cabinetDrawing(
  size: Pick<Enclosure, 'widthM' | 'heightM' | 'depthM'>,
  spaceWidthPx: number,
  spaceHeightPx: number,
  needs: DrawingNeeds = PLAIN,
): CabinetDrawing {
  const margin = Object.fromEntries(
    Object.entries(MARGIN_PX).map(([name, px]) => [name, px * needs.typeScale]),
  ) as typeof MARGIN_PX;
  const rightPx = needs.chained ? margin.chain : margin.right;
  const bottomPx = margin.bottom + (needs.secondRow ? margin.secondRow : 0);
  const down = spaceHeightPx - margin.top - bottomPx;
  const scaleFor = (widthsM: number, gapsPx: number) =>
    Math.max(LEAST_SCALE_PX_PER_M, Math.min((spaceWidthPx - gapsPx) / widthsM, down / size.heightM));
  const gapsPx = margin.left + margin.between + rightPx;
  // Beside a section that stands alone its depth is written.
  const aloneGapsPx = margin.left + margin.between + margin.chain;
  const both = scaleFor(size.widthM + size.depthM, gapsPx);
  const three = scaleFor(2 * size.widthM + size.depthM, gapsPx + margin.section);
  const switched = three < SCALE_KEPT * both;
  const isSide = !switched || needs.wanted === 'side';
  const secondM = isSide ? size.depthM : size.widthM;
  const pxPerM = switched ? scaleFor(size.widthM + secondM, isSide ? gapsPx : aloneGapsPx) : three;
  const usedPx = pxPerM * (size.widthM + secondM) + (switched ? 0 : pxPerM * size.widthM + margin.section);
  // What the height leaves free across is shared, so that the drawing stands in the middle of its column.
  const sparePx = Math.max(0, spaceWidthPx - (isSide ? gapsPx : aloneGapsPx) - usedPx);
  const heightPx = size.heightM * pxPerM;
  const topPx = margin.top;
  const front: Box = { leftPx: margin.left + sparePx / 3, topPx, widthPx: size.widthM * pxPerM, heightPx };
  const secondPx = front.leftPx + front.widthPx + margin.between + Math.min(sparePx / 6, 30);
  const side = isSide ? { leftPx: secondPx, topPx, widthPx: size.depthM * pxPerM, heightPx } : null;
  const sectionPx = side ? side.leftPx + side.widthPx + rightPx + margin.section - margin.right : secondPx;
  const section =
    switched && isSide
      ? null
      : {
          leftPx: sectionPx,
          topPx: topPx + margin.above,
          widthPx: size.widthM * pxPerM,
          heightPx: size.depthM * pxPerM,
        };
  const last = section ?? side ?? front;
  const tallestPx = Math.max(heightPx, section ? margin.above + section.heightPx : 0);
  return {
    pxPerM,
    front,
    side,
    section,
    switched,
    chained: needs.chained,
    widthPx: Math.max(spaceWidthPx, last.leftPx + last.widthPx + rightPx),
    heightPx: topPx + tallestPx + bottomPx,
  };
}

export interface Point {
  readonly xPx: number;
  readonly yPx: number;
}

/** A place on the front view, from coordinates on the baffle (x from the middle, y up from the bottom). */
export function onFront({ front, pxPerM }: Pick<CabinetDrawing, 'front' | 'pxPerM'>, xM: number, yM: number): Point {
  return {
    xPx: front.leftPx + front.widthPx / 2 + xM * pxPerM,
    yPx: front.topPx + front.heightPx - yM * pxPerM,
  };
}

/** A place in the side view, from depth behind the foremost edge and height above the bottom. The front is at the left. */
export function onSide({ side, pxPerM }: SideDrawing, behindFrontM: number, yM: number): Point {
  return {
    xPx: side.leftPx + behindFrontM * pxPerM,
    yPx: side.topPx + side.heightPx - yM * pxPerM,
  };
}

/** A place in the section from above, from x and depth behind the foremost edge. The front is at the bottom. */
export function onSection({ section, pxPerM }: SectionDrawing, xM: number, behindFrontM: number): Point {
  return {
    xPx: section.leftPx + section.widthPx / 2 + xM * pxPerM,
    yPx: section.topPx + section.heightPx - behindFrontM * pxPerM,
  };
}
