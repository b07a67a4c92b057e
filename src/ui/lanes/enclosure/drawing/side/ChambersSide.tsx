import { useWorkbench } from '../../../../useWorkbench.ts';
import { useWorkbenchStore } from '../../../../useWorkbenchStore.ts';
import { useWays } from '../../../useWays.ts';
import { wayColour } from '../../../wayColour.ts';
import { partitions, sideChambers } from '../../sideChambers.ts';
import { onSide, type SideDrawing } from '../cabinetDrawing.ts';
import { innerFrontM } from '../shape/innerFront.ts';
import { openStretches } from './openStretches.ts';

/** The chambers, tinted by who plays into them, the boards between them, and where the cabinet is open behind a driver. */
export function ChambersSide({ drawing }: { readonly drawing: SideDrawing }) {
  const store = useWorkbenchStore();
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const selection = useWorkbench((s) => s.selection);
  const ways = useWays();
  const outline = (bottomM: number, topM: number, backM: number) => {
    const corners: readonly (readonly [number, number])[] = [
      [innerFrontM(enclosure, bottomM), bottomM],
      [innerFrontM(enclosure, topM), topM],
      [backM, topM],
      [backM, bottomM],
    ];
    const points = corners.map(([behindM, yM]) => {
      const { xPx, yPx } = onSide(drawing, behindM, yM);
      return `${xPx.toFixed(1)},${yPx.toFixed(1)}`;
    });
    return `M${points.join('L')}Z`;
  };
  const indexOf = (chamberId: string) => {
    const touching = (way: { readonly speakerId: string }, key: 'chamberId' | 'frontChamberId') =>
      enclosure.mounts.some((mount) => mount.partId === way.speakerId && mount[key] === chamberId);
    const way = ways.find((one) => touching(one, 'chamberId')) ?? ways.find((one) => touching(one, 'frontChamberId'));
    return way?.index ?? null;
  };
  return (
    <>
      {openStretches(enclosure).map(({ bottomM, topM }) => (
        <path key={bottomM} className="cabinet-open" d={outline(bottomM, topM, enclosure.depthM)}>
          <title>Open at the back</title>
        </path>
      ))}
      {sideChambers(enclosure).map((chamber, k) => (
        // The chips below the drawing pick chambers by keyboard.
        <path
          key={chamber.id}
          className="cabinet-air"
          style={wayColour(indexOf(chamber.id))}
          data-stated={chamber.stated ? '' : undefined}
          data-picked={selection?.kind === 'chamber' && selection.id === chamber.id ? '' : undefined}
          d={outline(chamber.bottomM, chamber.topM, chamber.backM)}
          onPointerDown={() => store.getState().select({ kind: 'chamber', id: chamber.id })}
        >
          <title>
            {chamber.stated
              ? `${enclosure.chambers[k]!.name}: its size is stated, not its place${chamber.squeezed ? '; more than the cabinet holds, so drawn smaller' : ''}`
              : enclosure.chambers[k]!.name}
          </title>
        </path>
      ))}
      {partitions(enclosure).map((board) => {
        if (board.behind === null) {
          return (
            <path
              key={`${board.bottomM} ${board.topM}`}
              className="cabinet-partition"
              d={outline(board.bottomM, board.topM, board.backM)}
            />
          );
        }
        const a = onSide(drawing, board.frontM, board.topM);
        const b = onSide(drawing, board.backM, board.bottomM);
        return (
          <rect
            key={`behind ${board.behind}`}
            className="cabinet-partition"
            x={a.xPx}
            y={a.yPx}
            width={Math.max(0, b.xPx - a.xPx)}
            height={Math.max(0, b.yPx - a.yPx)}
          />
        );
      })}
    </>
  );
}
