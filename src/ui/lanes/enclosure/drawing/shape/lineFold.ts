interface Room {
  readonly leftPx: number;
  readonly topPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}
export interface LineFold {
  /** Centre line of the channel, from its start to its end. */
  readonly points: readonly (readonly [xPx: number, yPx: number])[];
  readonly runs: number;
}

const MOST_RUNS = 5;
const INSET_PX = 10;

/**
 * A symbol for a line: as many runs as its length needs in the longer direction of the room, beside one another; straight where it fits.
 * Only a symbol: the document does not say where a line runs.
 * @example lineFold(1.5, 300, { leftPx: 0, topPx: 0, widthPx: 100, heightPx: 200 }).runs // 3
 */
export function lineFold(lengthM: number, pxPerM: number, room: Room): LineFold {
  const upright = room.heightPx >= room.widthPx;
  const long = Math.max(1, (upright ? room.heightPx : room.widthPx) - 2 * INSET_PX);
  const wide = Math.max(1, (upright ? room.widthPx : room.heightPx) - 2 * INSET_PX);
  const runs = Math.max(1, Math.min(MOST_RUNS, Math.ceil((lengthM * pxPerM) / long)));
  const run = runs === 1 ? Math.min(long, lengthM * pxPerM) : long;
  const points = Array.from({ length: runs }, (_, k) => {
    const aside = INSET_PX + (runs === 1 ? wide / 2 : (k * wide) / (runs - 1));
    const ends = [INSET_PX, INSET_PX + run];
    if (k % 2 === 1) ends.reverse();
    return ends.map((along): [number, number] =>
      upright ? [room.leftPx + aside, room.topPx + along] : [room.leftPx + along, room.topPx + aside],
    );
  }).flat();
  return { points, runs };
}
