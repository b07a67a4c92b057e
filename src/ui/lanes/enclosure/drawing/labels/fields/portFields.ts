import { portName } from '../../../../../../core/document/describe/portName.ts';
import type { CabinetDrawing } from '../../cabinetDrawing.ts';
import { tubePlace } from '../../side/tubePlace.ts';
import type { DimensionField, Drawn } from './dimensionField.ts';

/** The lengths of the ports, beside their tubes in the side view. */
export function portFields({
  drawing,
  enclosure,
  typeScale,
  side,
}: Drawn & { readonly side: NonNullable<CabinetDrawing['side']> }) {
  const half = 13 * typeScale;
  return enclosure.ports.map((port): DimensionField => {
    const { middle, halfPx, isUpright } = tubePlace({ side, pxPerM: drawing.pxPerM }, port, enclosure);
    const beside = halfPx + half;
    const alongs = [0, -36 * typeScale, 36 * typeScale];
    const across = isUpright ? [halfPx + 30 * typeScale, -halfPx - 30 * typeScale] : [-beside, beside];
    return {
      key: `port ${port.id}`,
      label: `Length of ${portName(port.id)}`,
      kind: 'length',
      value: port.lengthM,
      least: 0.001,
      must: true,
      command: (lengthM) => ({ type: 'set-port', id: port.id, changes: { lengthM } }),
      places: alongs.flatMap((along) =>
        across.map((off) =>
          isUpright
            ? { xPx: middle.xPx + off, yPx: middle.yPx + along, line: '' }
            : { xPx: middle.xPx + along, yPx: middle.yPx + off, line: '' },
        ),
      ),
    };
  });
}
