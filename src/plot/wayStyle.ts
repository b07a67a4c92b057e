/** How a line is drawn: a colour by the name of its CSS variable, dashes in multiples of the width, width in pixels. */
export interface LineStyle {
  readonly colour: string;
  readonly dash: readonly number[];
  readonly widthPx: number;
}

const DASHES: readonly (readonly number[])[] = [
  [6, 2.5],
  [7, 2, 1.5, 2],
  [2.5, 2],
  [11, 3],
  [7, 2, 1.5, 2, 1.5, 2],
  [4, 4],
];

/**
 * Style of the way with this index in lane order: colours repeat after six, and so do dashes. Colour is never alone:
 * every way has its own dash pattern too.
 * Example: `wayStyle(0)` is `{ colour: '--way-1', dash: [6, 2.5], widthPx: 1.75 }`.
 */
export function wayStyle(index: number): LineStyle {
  const place = ((index % DASHES.length) + DASHES.length) % DASHES.length;
  return { colour: `--way-${place + 1}`, dash: DASHES[place] ?? [], widthPx: 1.75 };
}

/** The sum: solid and thickest. */
export const SUM_STYLE: LineStyle = { colour: '--sum', dash: [], widthPx: 2.5 };

/** A kept state: faint dots. Every second one is dotted wider, so that two can be told apart. */
export const ghostStyle = (index: number): LineStyle => ({
  colour: '--ghost',
  dash: index % 2 === 0 ? [1, 2] : [1, 4],
  widthPx: 1.5,
});
