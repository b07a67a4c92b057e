import type { Chamber } from '../../../../core/document/schema.ts';
import { fieldMessage } from '../../../fields/fieldMessageText.ts';
import { AlignmentMapView } from '../../../plots/map/index.ts';
import { useWorkbench } from '../../../useWorkbench.ts';
import { RoomFor } from './RoomFor.tsx';
import { useChamberMap } from './useChamberMap.ts';
import { useMapMoves } from './useMapMoves.ts';

/** The alignment map of one chamber: its dot sets the chamber's size and the port's length, a published box is taken by a click. */
export default function ChamberMap({ chamber }: { readonly chamber: Chamber }) {
  const system = useWorkbench((s) => s.settings.units);
  const { map, points, present, problems } = useChamberMap(chamber);
  const moves = useMapMoves(chamber);
  if (map === null || points === null) return <p className="enclosure-panel-result">{fieldMessage(problems)}</p>;
  return (
    <>
      <AlignmentMapView
        map={map}
        points={points}
        present={present.vented}
        sealedM3={present.sealedM3}
        units={system}
        onMove={moves.move}
        onCommit={moves.commit}
        onCancel={moves.cancel}
        onPickSealed={moves.seal}
      />
      <p className="enclosure-map-doubt" role="status">
        {fieldMessage(moves.problems)}
      </p>
      {moves.wish !== null && moves.problems[0]?.code === 'design.no-room' ? (
        <RoomFor chamber={chamber} wish={moves.wish} taken={moves.settle} />
      ) : null}
      <p className="enclosure-small lane-soft">
        The dot sets the size of {chamber.name} and the length of its port; volumes are apparent, with what the filling
        gains. A click into the map takes the box there; without a port it adds a round one on the back. Losses as set
        for the chamber and its port; Qts with amplifier, cable and crossover coil in series; coil inductance left out.
      </p>
    </>
  );
}
