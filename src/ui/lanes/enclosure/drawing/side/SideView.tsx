import { frontSetbackM, thicknessOfM } from '../../../../../core/document/insideSpace.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { useWays } from '../../../useWays.ts';
import { onSide, type SideDrawing } from '../cabinetDrawing.ts';
import { type Corner, sideOutline } from '../shape/cabinetOutline.ts';
import { BraceSide } from './BraceSide.tsx';
import { ChambersSide } from './ChambersSide.tsx';
import { DriverSide } from './DriverSide.tsx';
import { isBareBaffle } from './isBareBaffle.ts';
import { LineSide } from './LineSide.tsx';
import { OpeningsSide } from './OpeningsSide.tsx';

/** The cabinet cut along its middle, front at the left: walls, chambers, boards, braces, drivers, ports, radiators, lines. */
export function SideView({ drawing }: { readonly drawing: SideDrawing }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const ways = useWays();
  const path = (corners: readonly Corner[]) =>
    `M${corners
      .map(({ behindM, otherM }) => {
        const { xPx, yPx } = onSide(drawing, behindM, otherM);
        return `${xPx.toFixed(1)},${yPx.toFixed(1)}`;
      })
      .join('L')}Z`;
  const { outer, inner } = sideOutline(enclosure);
  const bare = isBareBaffle(enclosure);
  const frontOnly: Corner[] = [
    outer[0]!,
    outer[1]!,
    ...[enclosure.heightM, 0].map((otherM) => ({
      behindM: frontSetbackM(enclosure, otherM) + thicknessOfM(enclosure, 'front'),
      otherM,
    })),
  ];
  return (
    <g>
      {bare ? (
        <>
          <path className="cabinet-open" d={path(outer)}>
            <title>No box: the drivers are open at their backs</title>
          </path>
          <path className="cabinet-wood" d={path(frontOnly)} />
        </>
      ) : (
        <>
          <path className="cabinet-wood" d={path(outer)} />
          <path className="cabinet-hollow" d={path(inner)} />
        </>
      )}
      <ChambersSide drawing={drawing} />
      <LineSide drawing={drawing} />
      <BraceSide drawing={drawing} />
      {ways.map((way) => (
        <DriverSide key={way.speakerId} drawing={drawing} way={way} />
      ))}
      <OpeningsSide drawing={drawing} />
    </g>
  );
}
