import { frontSetbackM } from '../../../../../core/document/insideSpace.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { onSide, type SideDrawing } from '../cabinetDrawing.ts';
import { lineFold } from '../shape/lineFold.ts';
import { lineMouth } from '../shape/lineMouth.ts';
import { lineRoom } from './lineRoom.ts';

/** Lines as a dashed symbol of their runs, since nobody said where they run, and their mouths where those are. */
export function LineSide({ drawing }: { readonly drawing: SideDrawing }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const selection = useWorkbench((s) => s.selection);
  const { pxPerM } = drawing;
  return enclosure.lines.map((line) => {
    const { points } = lineFold(line.lengthM, pxPerM, lineRoom(drawing, line, enclosure));
    const { end } = line;
    const heightM = lineMouth(line, enclosure).heightM;
    const mouth =
      end.kind === 'open'
        ? onSide(drawing, end.face === 'front' ? frontSetbackM(enclosure, end.yM) : enclosure.depthM, end.yM)
        : null;
    const path = `M${points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join('L')}`;
    const wall = enclosure.panelM * pxPerM;
    return (
      <g
        key={line.id}
        className="cabinet-line"
        data-picked={selection?.kind === 'duct' && selection.id === line.id ? '' : undefined}
      >
        <title>{`${line.name || 'Transmission line'}: a symbol, not its place`}</title>
        <path className="cabinet-line-edge" d={path} />
        <path className="cabinet-line-bore" d={path} />
        {line.filling ? <path className="cabinet-line-filling" d={path} /> : null}
        {mouth && end.kind === 'open' ? (
          <rect
            className="cabinet-port"
            x={end.face === 'front' ? mouth.xPx : mouth.xPx - wall}
            y={mouth.yPx - (heightM * pxPerM) / 2}
            width={wall}
            height={heightM * pxPerM}
          />
        ) : null}
      </g>
    );
  });
}
