import { BELOW_PX, type DimensionField, type Drawn, LEAST_M } from './dimensionField.ts';

const BETWEEN_PX = 44;

/** Width, height and depth. */
export function outsideFields({ drawing, enclosure, typeScale }: Drawn): DimensionField[] {
  const { front, side, section } = drawing;
  const floorPx = front.topPx + front.heightPx + 12;
  const set = (name: 'widthM' | 'heightM' | 'depthM', words: string): Omit<DimensionField, 'places'> => ({
    key: name,
    label: `Outside ${words}`,
    kind: 'length',
    value: enclosure[name],
    least: LEAST_M,
    must: true,
    command: (value) => ({ type: 'set-enclosure', changes: { [name]: value } }),
  });
  const level = (leftPx: number, widthPx: number, yPx: number) =>
    `M${leftPx},${yPx}h${widthPx}M${leftPx},${yPx - 5}v10M${leftPx + widthPx},${yPx - 5}v10`;
  const upright = (xPx: number, topPx: number, heightPx: number) =>
    `M${xPx},${topPx}v${heightPx}M${xPx - 5},${topPx}h10M${xPx - 5},${topPx + heightPx}h10`;
  const below = (leftPx: number, widthPx: number) => ({
    xPx: leftPx + widthPx / 2,
    yPx: floorPx - 12 + BELOW_PX * typeScale,
    line: level(leftPx, widthPx, floorPx),
  });
  const upPx = front.leftPx + front.widthPx + BETWEEN_PX * typeScale;
  const heightLine = upright(upPx, front.topPx, front.heightPx);
  const shares = [0.58, 0.46, 0.7, 0.34, 0.82];
  const depthLine = section ? upright(section.leftPx + section.widthPx + 12, section.topPx, section.heightPx) : '';
  return [
    { ...set('widthM', 'width'), places: [below(front.leftPx, front.widthPx)] },
    {
      ...set('heightM', 'height'),
      backed: true,
      places: shares.map((share) => ({ xPx: upPx, yPx: front.topPx + front.heightPx * share, line: heightLine })),
    },
    side
      ? { ...set('depthM', 'depth'), places: [below(side.leftPx, side.widthPx)] }
      : {
          ...set('depthM', 'depth'),
          backed: true,
          anchor: 'left',
          places: section
            ? [
                {
                  xPx: section.leftPx + section.widthPx + 5,
                  yPx: section.topPx + section.heightPx / 2,
                  line: depthLine,
                },
              ]
            : [],
        },
  ];
}
