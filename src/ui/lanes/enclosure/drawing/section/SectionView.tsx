import { clearWidthM, frontSetbackM, thicknessOfM } from '../../../../../core/document/insideSpace.ts';
import { quantityText } from '../../../../../core/units/formatQuantity.ts';
import { showInField } from '../../../../fields/showInField.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { useWays } from '../../../useWays.ts';
import { wayColour } from '../../../wayColour.ts';
import { partitions, sideChambers } from '../../sideChambers.ts';
import { onSection, type SectionDrawing } from '../cabinetDrawing.ts';
import { DriverProfile } from '../profile/DriverProfile.tsx';
import { type Corner, sectionOutline } from '../shape/cabinetOutline.ts';
import { driverSeat } from '../shape/driverSeat.ts';
import { innerFrontM } from '../shape/innerFront.ts';
import { isBareBaffle } from '../side/isBareBaffle.ts';
import { SectionBraces } from './SectionBraces.tsx';
import { SectionOpenings } from './SectionOpenings.tsx';

/** The cabinet cut level at a height and seen from above, front at the bottom: inner width, drivers, tubes, radiators, braces. */
export function SectionView({ drawing, yM }: { readonly drawing: SectionDrawing; readonly yM: number }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const system = useWorkbench((s) => s.settings.units);
  const ways = useWays();
  const { section, pxPerM } = drawing;
  const path = (corners: readonly Corner[]) =>
    `M${corners
      .map(({ behindM, otherM }) => {
        const { xPx, yPx } = onSection(drawing, otherM, behindM);
        return `${xPx.toFixed(1)},${yPx.toFixed(1)}`;
      })
      .join('L')}Z`;
  const { outer, inner } = sectionOutline(enclosure, yM);
  const level = partitions(enclosure).some((board) => board.behind === null && yM > board.bottomM && yM < board.topM);
  const bare = isBareBaffle(enclosure);
  const frontBoard: Corner[] = [
    outer[0]!,
    { ...outer[0]!, behindM: inner[0]!.behindM },
    { ...outer[3]!, behindM: inner[0]!.behindM },
    outer[3]!,
  ];
  // Whole millimetres: what is measured across the inside of a box.
  const length = (m: number) => quantityText(showInField(Math.round(m * 1000) / 1000, 'length', system, 'mm'));
  const widths = [inner[0]!.behindM, inner[1]!.behindM].map((behindM) => length(clearWidthM(enclosure, behindM)));
  const chamber = sideChambers(enclosure).find((one) => !one.stated && yM >= one.bottomM && yM <= one.topM);
  const touching = ways.find((way) =>
    enclosure.mounts.some(({ partId, chamberId }) => partId === way.speakerId && chamberId === chamber?.id),
  );
  const backAt = chamber ? onSection(drawing, 0, chamber.backM) : null;
  const isShallow = chamber && chamber.backM < inner[1]!.behindM - 1e-3;
  const air = chamber ? { ...inner, back: Math.min(chamber.backM, inner[1]!.behindM) } : null;
  return (
    <g>
      {bare ? (
        <>
          <path className="cabinet-open" d={path(outer)} />
          <path className="cabinet-wood" d={path(frontBoard)} />
        </>
      ) : (
        <>
          <path className="cabinet-wood" d={path(outer)} />
          <path className={level ? 'cabinet-partition' : 'cabinet-hollow'} d={path(inner)} />
        </>
      )}
      {air && !level ? (
        <path
          className="cabinet-air cabinet-air-still"
          style={wayColour(touching?.index ?? null)}
          d={path(
            inner.map((corner, k) => {
              if (k === 0 || k === 3) return corner;
              const share = (air.back - inner[0]!.behindM) / Math.max(1e-6, inner[1]!.behindM - inner[0]!.behindM);
              const from = inner[k === 1 ? 0 : 3]!;
              return { behindM: air.back, otherM: from.otherM + (corner.otherM - from.otherM) * share };
            }),
          )}
        />
      ) : null}
      {isShallow && backAt ? (
        <rect
          className="cabinet-partition"
          x={onSection(drawing, inner[0]!.otherM, 0).xPx}
          y={backAt.yPx - enclosure.panelM * pxPerM}
          width={(inner[3]!.otherM - inner[0]!.otherM) * pxPerM}
          height={enclosure.panelM * pxPerM}
        />
      ) : null}
      <SectionBraces drawing={drawing} yM={yM} />
      <SectionOpenings drawing={drawing} yM={yM} />
      {ways.map((way) => {
        const mount = enclosure.mounts.find(({ partId }) => partId === way.speakerId);
        if (!mount) return null;
        const seat = driverSeat(mount, enclosure);
        const radiusM = way.driver ? way.driver.outerDiameterM / 2 : 0.05;
        if (seat.kind === 'board') {
          if (Math.abs(yM - seat.upM) > 0.02) return null;
          const { xPx, yPx } = onSection(drawing, mount.xM, seat.behindM);
          return (
            <circle
              key={way.speakerId}
              className="cabinet-driver-frame"
              style={wayColour(way.index)}
              cx={xPx}
              cy={yPx}
              r={radiusM * pxPerM}
            />
          );
        }
        const offM = Math.abs(yM - mount.yM);
        if (offM >= radiusM) return null;
        const { xPx, yPx } = onSection(drawing, mount.xM, frontSetbackM(enclosure, yM));
        return (
          <g key={way.speakerId} style={wayColour(way.index)} transform={`translate(${xPx} ${yPx}) rotate(-90)`}>
            <DriverProfile
              driver={way.driver}
              wallM={innerFrontM(enclosure, yM) - frontSetbackM(enclosure, yM) || thicknessOfM(enclosure, 'front')}
              pxPerM={pxPerM}
              offM={offM}
            />
          </g>
        );
      })}
      <text
        className="cabinet-tuning"
        x={section.leftPx + section.widthPx / 2}
        y={section.topPx + section.heightPx + 18}
      >
        {`inside ${widths[0] === widths[1] ? widths[0] : `${widths[0]!.replace(/ [^ ]+$/, '')} to ${widths[1]}`}`}
      </text>
    </g>
  );
}
