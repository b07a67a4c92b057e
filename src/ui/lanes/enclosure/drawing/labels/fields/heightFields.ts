import { onFront } from '../../cabinetDrawing.ts';
import type { DimensionField, Drawn } from './dimensionField.ts';

/** How high the drivers of the front sit, on their leads. */
export function heightFields(
  { drawing, enclosure, typeScale }: Drawn,
  ways: readonly { readonly speakerId: string; readonly name: string }[],
): DimensionField[] {
  return ways.flatMap(({ speakerId, name }): DimensionField[] => {
    const mount = enclosure.mounts.find(({ partId }) => partId === speakerId);
    if (!mount || mount.frontChamberId !== null) return [];
    const { yPx } = onFront(drawing, 0, mount.yM);
    const xPx = drawing.front.leftPx - 5;
    const line = `M${xPx - 3},${yPx}h8`;
    return [
      {
        key: `height ${speakerId}`,
        label: `Height of the ${name} above the bottom`,
        kind: 'length',
        value: mount.yM,
        least: 0,
        greatest: enclosure.heightM,
        anchor: 'right',
        backed: true,
        command: (yM) => ({ type: 'set-mount', partId: speakerId, changes: { yM } }),
        places: [-15, 15].map((off) => ({ xPx, yPx: yPx + off * typeScale, line })),
      },
    ];
  });
}
