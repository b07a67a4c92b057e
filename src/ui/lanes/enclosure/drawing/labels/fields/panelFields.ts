import { frontSetbackM, thicknessOfM } from '../../../../../../core/document/insideSpace.ts';
import { BELOW_PX, type DimensionField, type Drawn, LEAST_M } from './dimensionField.ts';

/** Thickness and lean of the front. */
export function panelFields({ drawing, enclosure, typeScale }: Drawn): DimensionField[] {
  const { front, pxPerM } = drawing;
  const side = drawing.side!;
  const { wood } = enclosure;
  const thicknessM = thicknessOfM(enclosure, 'front');
  const floorPx = front.topPx + front.heightPx;
  const leftPx = front.leftPx + front.widthPx;
  const leanM = frontSetbackM(enclosure, enclosure.heightM);
  const thickness: DimensionField = {
    key: 'panel',
    label: 'Thickness of the front',
    kind: 'length',
    value: thicknessM,
    least: 0.001,
    command: (value) =>
      wood.frontM === null
        ? { type: 'set-enclosure', changes: { panelM: value } }
        : { type: 'set-wood', changes: { frontM: value } },
    places: [
      {
        xPx: (leftPx + side.leftPx) / 2,
        yPx: floorPx + BELOW_PX * typeScale,
        line: `M${(leftPx + side.leftPx) / 2 + 8},${floorPx + 15 * typeScale}L${side.leftPx + (thicknessM * pxPerM) / 2},${floorPx - 4}`,
      },
    ],
  };
  const lean: DimensionField = {
    key: 'lean',
    label: 'Lean of the front',
    kind: 'angle',
    value: wood.frontLeanDeg,
    least: 0,
    greatest: 30,
    command: (value) => ({ type: 'set-wood', changes: { frontLeanDeg: value } }),
    places: [0.08, 0.16, 0.24].map((share) => ({
      xPx: side.leftPx + Math.min(0, leanM * pxPerM * (1 - share) - 36) - 2 + (leanM * pxPerM * (1 - share)) / 2,
      yPx: side.topPx + side.heightPx * share,
      line: `M${side.leftPx},${side.topPx + side.heightPx}V${side.topPx}`,
    })),
  };
  return wood.frontLeanDeg > 0 ? [thickness, lean] : [thickness];
}

/** Width at the back, above the section. */
export function backFields({ drawing, enclosure, typeScale }: Drawn): DimensionField[] {
  const section = drawing.section!;
  const { widthM, wood } = enclosure;
  const value = wood.backWidthM ?? widthM;
  const spanPx = value * drawing.pxPerM;
  const leftPx = section.leftPx + (section.widthPx - spanPx) / 2;
  const yPx = section.topPx - 5;
  const line = `M${leftPx},${yPx - 3}h${spanPx}M${leftPx},${yPx - 7}v8M${leftPx + spanPx},${yPx - 7}v8`;
  return [
    {
      key: 'back width',
      label: 'Width at the back',
      kind: 'length',
      value,
      least: LEAST_M,
      command: (next) => ({ type: 'set-wood', changes: { backWidthM: next } }),
      places: [{ xPx: section.leftPx + section.widthPx / 2, yPx: yPx - 15 * typeScale, line }],
    },
  ];
}
