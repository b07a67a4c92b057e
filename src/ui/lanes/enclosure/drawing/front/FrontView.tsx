import { thicknessOfM } from '../../../../../core/document/insideSpace.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { useWays } from '../../../useWays.ts';
import { type CabinetDrawing, onFront } from '../cabinetDrawing.ts';
import { braceBoards } from '../shape/braceBoards.ts';
import { DriverFront } from './DriverFront.tsx';
import { Openings } from './Openings.tsx';

/** The front as it is seen, with all that is mounted on it; what lies behind it is dashed. Only the drawing: the handles lie over it. */
export function FrontView({ drawing }: { readonly drawing: CabinetDrawing }) {
  const ways = useWays();
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const { front, pxPerM } = drawing;
  const insideX = thicknessOfM(enclosure, 'left') * pxPerM;
  const insideRight = thicknessOfM(enclosure, 'right') * pxPerM;
  const insideTop = thicknessOfM(enclosure, 'top') * pxPerM;
  const insideBottom = thicknessOfM(enclosure, 'bottom') * pxPerM;
  const lean = enclosure.wood.frontLeanDeg;
  return (
    <g>
      <text className="cabinet-title" x={front.leftPx + front.widthPx / 2} y={front.topPx - 11}>
        front
        {lean > 0 ? <title>{`Seen from straight ahead; the front leans back by ${lean}°`}</title> : null}
      </text>
      <rect
        className="cabinet-wood"
        x={front.leftPx}
        y={front.topPx}
        width={front.widthPx}
        height={front.heightPx}
        rx={2}
      />
      <rect
        className="cabinet-hidden-edge"
        x={front.leftPx + insideX}
        y={front.topPx + insideTop}
        width={Math.max(0, front.widthPx - insideX - insideRight)}
        height={Math.max(0, front.heightPx - insideTop - insideBottom)}
      />
      {braceBoards(enclosure).map(({ id, lies, wood }) => {
        if (lies === 'across') return null;
        const a = onFront(drawing, wood.acrossM[0], wood.upM[1]);
        const b = onFront(drawing, wood.acrossM[1], wood.upM[0]);
        return (
          <rect
            key={id}
            className="cabinet-hidden-edge"
            x={a.xPx}
            y={a.yPx}
            width={Math.max(0, b.xPx - a.xPx)}
            height={Math.max(0, b.yPx - a.yPx)}
          />
        );
      })}
      <Openings drawing={drawing} face="back" />
      <Openings drawing={drawing} face="front" />
      {ways.map((way) => (
        <DriverFront key={way.speakerId} drawing={drawing} way={way} />
      ))}
    </g>
  );
}
