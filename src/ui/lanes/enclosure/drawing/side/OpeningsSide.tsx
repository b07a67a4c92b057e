import { frontSetbackM } from '../../../../../core/document/insideSpace.ts';
import type { PassiveRadiator } from '../../../../../core/document/schema.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { openingM } from '../../portFaces.ts';
import { onSide, type SideDrawing } from '../cabinetDrawing.ts';
import { PortTube } from '../profile/PortTube.tsx';
import { RadiatorProfile } from '../profile/RadiatorProfile.tsx';
import { radiatorPlaces } from '../shape/radiatorPlaces.ts';
import { tubePlace } from './tubePlace.ts';

/** Ports and passive radiators in the side view, each square to what it goes through. */
export function OpeningsSide({ drawing }: { readonly drawing: SideDrawing }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const selection = useWorkbench((s) => s.selection);
  const picked = (kind: string, id: string) => (selection?.kind === kind && selection.id === id ? '' : undefined);
  const lean = enclosure.wood.frontLeanDeg;
  const onFace = (face: PassiveRadiator['face'], yM: number) => {
    const { xPx, yPx } = onSide(drawing, face === 'front' ? frontSetbackM(enclosure, yM) : enclosure.depthM, yM);
    return `translate(${xPx} ${yPx}) rotate(${face === 'front' ? lean : 180})`;
  };
  return (
    <>
      {enclosure.ports.map((port) => {
        const { mouth, turnDeg } = tubePlace(drawing, port, enclosure);
        return (
          <g
            key={port.id}
            data-picked={picked('port', port.id)}
            transform={`translate(${mouth.xPx} ${mouth.yPx}) rotate(${turnDeg})`}
          >
            <PortTube port={port} halfM={openingM(port).heightM / 2} pxPerM={drawing.pxPerM} />
          </g>
        );
      })}
      {enclosure.passiveRadiators.map((radiator) =>
        heightsOf(radiatorPlaces(radiator, enclosure)).map((yM) => (
          <g
            key={`${radiator.id} ${yM}`}
            data-picked={picked('radiator', radiator.id)}
            transform={onFace(radiator.face, yM)}
          >
            <RadiatorProfile radiator={radiator} pxPerM={drawing.pxPerM} />
          </g>
        )),
      )}
    </>
  );
}

/** Those side by side lie behind one another here. */
const heightsOf = (places: readonly { readonly yM: number }[]): number[] => [...new Set(places.map(({ yM }) => yM))];
