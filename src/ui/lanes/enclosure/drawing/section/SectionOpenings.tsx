import { frontSetbackM } from '../../../../../core/document/insideSpace.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { openingCentresM, openingM } from '../../portFaces.ts';
import { onSection, type SectionDrawing } from '../cabinetDrawing.ts';
import { PortTube } from '../profile/PortTube.tsx';
import { RadiatorProfile } from '../profile/RadiatorProfile.tsx';
import { lineMouth } from '../shape/lineMouth.ts';
import { radiatorPlaces } from '../shape/radiatorPlaces.ts';

/** Tubes, passive radiators and mouths that the level cut meets. */
export function SectionOpenings({ drawing, yM }: { readonly drawing: SectionDrawing; readonly yM: number }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const { pxPerM } = drawing;
  const onFace = (face: 'front' | 'back', xM: number) => {
    const { xPx, yPx } = onSection(drawing, xM, face === 'front' ? frontSetbackM(enclosure, yM) : enclosure.depthM);
    return `translate(${xPx} ${yPx}) rotate(${face === 'front' ? -90 : 90})`;
  };
  return (
    <>
      {enclosure.ports.flatMap((port) => {
        const { widthM, heightM } = openingM(port);
        const offM = Math.abs(yM - port.yM);
        if (port.toChamberId !== null || offM >= heightM / 2) return [];
        const halfM = port.shape.kind === 'round' ? Math.sqrt((widthM / 2) ** 2 - offM ** 2) : widthM / 2;
        return openingCentresM(port).map((xM) => (
          <g key={`${port.id} ${xM}`} transform={onFace(port.face, xM)}>
            <PortTube port={port} halfM={halfM} pxPerM={pxPerM} />
          </g>
        ));
      })}
      {enclosure.passiveRadiators.flatMap((radiator) =>
        radiatorPlaces(radiator, enclosure).flatMap((place) => {
          const offM = Math.abs(yM - place.yM);
          if (offM >= radiator.outerDiameterM / 2) return [];
          return (
            <g key={`${radiator.id} ${place.xM} ${place.yM}`} transform={onFace(radiator.face, place.xM)}>
              <RadiatorProfile radiator={radiator} pxPerM={pxPerM} offM={offM} />
            </g>
          );
        }),
      )}
      {enclosure.lines.map((line) => {
        const { end } = line;
        const { widthM, heightM } = lineMouth(line, enclosure);
        if (end.kind !== 'open' || Math.abs(yM - end.yM) > heightM / 2) return null;
        const deep = enclosure.panelM * pxPerM;
        return (
          <g key={line.id} transform={onFace(end.face, end.xM)}>
            <rect className="cabinet-port" y={(-widthM * pxPerM) / 2} width={deep} height={widthM * pxPerM} />
          </g>
        );
      })}
    </>
  );
}
