import type { SheetCut, SheetPlan, SheetRectangle } from '../../../core/build/sheets/index.ts';

const SAME_M = 1e-6;

const alike = (a: SheetRectangle, b: SheetRectangle): boolean =>
  (['xM', 'yM', 'lengthM', 'widthM'] as const).every((side) => Math.abs(a[side] - b[side]) < SAME_M);

/** The two rectangles that a cut leaves, the kept one first. */
function halves({ from, axis, fenceM, atM }: SheetCut, kerfM: number): readonly [SheetRectangle, SheetRectangle] {
  const { xM, yM, lengthM, widthM } = from;
  if (axis === 'x')
    return [
      { ...from, lengthM: fenceM },
      { ...from, xM: atM + kerfM, lengthM: xM + lengthM - atM - kerfM },
    ];
  return [
    { ...from, widthM: fenceM },
    { ...from, yM: atM + kerfM, widthM: yM + widthM - atM - kerfM },
  ];
}

/**
 * What each numbered piece of a sheet is: a finished part by its mark, a piece still to be cut by its number, or an off-cut.
 * @example pieceNames(plan, 0.003, (partId) => 'A').get(5) // 'A'
 */
export function pieceNames(
  plan: SheetPlan,
  kerfM: number,
  markOf: (partId: string) => string,
): ReadonlyMap<number, string> {
  const names = new Map<number, string>([[0, 'the board']]);
  const cutLater = new Set(plan.cuts.filter(({ kind }) => kind !== 'trim').map(({ piece }) => piece));
  for (const cut of plan.cuts) {
    if (cut.kind === 'trim') continue;
    const rectangles = halves(cut, kerfM);
    cut.leaves.forEach((piece, side) => {
      if (piece === null || cutLater.has(piece)) {
        if (piece !== null && piece !== 0) names.set(piece, `piece ${piece}`);
        return;
      }
      const part = plan.parts.find((candidate) => alike(candidate, rectangles[side]!));
      names.set(piece, part === undefined ? 'off-cut' : `${markOf(part.partId)}, finished`);
    });
  }
  return names;
}
