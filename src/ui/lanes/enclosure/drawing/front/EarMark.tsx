import { quantityText } from '../../../../../core/units/formatQuantity.ts';
import { showInField } from '../../../../fields/showInField.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { type CabinetDrawing, onFront } from '../cabinetDrawing.ts';

/** Height of the listening axis beside the front; above or below the cabinet an arrow at the edge says so. */
export function EarMark({ drawing }: { readonly drawing: CabinetDrawing }) {
  const axisM = useWorkbench((s) => s.project.listening.heightM - s.project.listening.standHeightM);
  const heightM = useWorkbench((s) => s.project.enclosure.heightM);
  const system = useWorkbench((s) => s.settings.units);
  const { yPx } = onFront(drawing, 0, Math.min(heightM, Math.max(0, axisM)));
  const edge = drawing.front.leftPx + drawing.front.widthPx;
  const arrow = axisM > heightM ? '↑' : axisM < 0 ? '↓' : '';
  const text = quantityText(showInField(axisM, 'length', system, 'mm'));
  return (
    <g className="cabinet-ears">
      <title>{`Listening axis ${text} above the bottom of the cabinet`}</title>
      <path className="cabinet-ears-line" d={`M${edge - 10},${yPx}h16`} />
      <path className="cabinet-ears-mark" d={`M${edge + 2},${yPx}l8,-4.5v9z`} />
      <text x={edge + 13} y={yPx + 4}>
        ears{arrow}
      </text>
    </g>
  );
}
