/** How the three columns are laid out in the space there is. */
export type LaneLayout = 'three-columns' | 'enclosure-below' | 'stacked';

const THREE_COLUMNS_REM = 68;
const TWO_COLUMNS_REM = 43;

/** Three columns where there is room, the enclosure below the lanes where there is less, everything stacked on a phone. */
export function laneLayout(widthPx: number, remPx: number): LaneLayout {
  if (widthPx >= THREE_COLUMNS_REM * remPx) return 'three-columns';
  return widthPx >= TWO_COLUMNS_REM * remPx ? 'enclosure-below' : 'stacked';
}
