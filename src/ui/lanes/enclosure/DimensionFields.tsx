import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { type CabinetDrawing, onSide } from './cabinetDrawing.ts';
import { portEndHeightPx } from './portEndHeight.ts';
import { openingM } from './portFaces.ts';

const LEAST_M = 0.05;
const BELOW_PX = 26;
const BETWEEN_PX = 44;

/** Lines and ticks of the outside dimensions. */
export function DimensionLines({ drawing }: { readonly drawing: CabinetDrawing }) {
  const { front, side } = drawing;
  const floor = front.topPx + front.heightPx + 12;
  const across = (leftPx: number, widthPx: number) =>
    `M${leftPx},${floor}h${widthPx}M${leftPx},${floor - 5}v10M${leftPx + widthPx},${floor - 5}v10`;
  const up = front.leftPx + front.widthPx + BETWEEN_PX;
  return (
    <path
      className="cabinet-dimension"
      d={`${across(front.leftPx, front.widthPx)}${across(side.leftPx, side.widthPx)}M${up},${front.topPx}v${front.heightPx}M${up - 5},${front.topPx}h10M${up - 5},${front.topPx + front.heightPx}h10`}
    />
  );
}

/** The outside dimensions and the ports' lengths, edited on their lines. */
export function DimensionFields({ drawing }: { readonly drawing: CabinetDrawing }) {
  const { widthM, heightM, depthM } = useWorkbench((s) => s.project.enclosure);
  const ports = useWorkbench((s) => s.project.enclosure.ports);
  const { front, side } = drawing;
  const floor = front.topPx + front.heightPx + BELOW_PX;
  const size = (name: 'widthM' | 'heightM' | 'depthM', words: string, value: number) => (
    <QuantityField
      label={`Outside ${words}`}
      kind="length"
      metricUnit="mm"
      value={value}
      least={LEAST_M}
      command={(next) => ({ type: 'set-enclosure', changes: { [name]: next } })}
    />
  );
  return (
    <>
      <div className="cabinet-field" style={{ left: front.leftPx + front.widthPx / 2, top: floor }}>
        {size('widthM', 'width', widthM)}
      </div>
      <div
        className="cabinet-field cabinet-field-backed"
        style={{ left: front.leftPx + front.widthPx + BETWEEN_PX, top: front.topPx + front.heightPx * 0.58 }}
      >
        {size('heightM', 'height', heightM)}
      </div>
      <div className="cabinet-field" style={{ left: side.leftPx + side.widthPx / 2, top: floor }}>
        {size('depthM', 'depth', depthM)}
      </div>
      {ports.map((port) => {
        const end = onSide(drawing, port.face === 'front' ? port.lengthM : depthM - port.lengthM, port.yM);
        const wallsPx = (openingM(port).heightM / 2 + port.wallM) * drawing.pxPerM + 1;
        // Clear of the walls and of the handle at the port's end.
        const above = end.yPx - Math.max(wallsPx, portEndHeightPx(drawing, port) / 2);
        const middle = onSide(drawing, port.face === 'front' ? port.lengthM / 2 : depthM - port.lengthM / 2, 0);
        return (
          <div key={port.id} className="cabinet-field cabinet-field-above" style={{ left: middle.xPx, top: above }}>
            <QuantityField
              label={`Length of port ${port.id}`}
              kind="length"
              metricUnit="mm"
              value={port.lengthM}
              least={0.001}
              command={(lengthM) => ({ type: 'set-port', id: port.id, changes: { lengthM } })}
            />
          </div>
        );
      })}
    </>
  );
}
